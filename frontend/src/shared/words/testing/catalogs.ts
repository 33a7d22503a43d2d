import type { Catalog, Entry, Translation } from '../mechanism';

const forms = (entry: Entry): string[] => (typeof entry === 'string' ? [entry] : Object.values(entry));
const slots = (entry: Entry): string => [...new Set(forms(entry).flatMap((text) => text.match(/\{\w+\}/g) ?? []))].sort().join(' ');

/** What a translation lacks against the English catalog; for the tests of each catalog. */
export function catalogFaults<C extends Catalog>(en: C, other: Translation<C>): string[] {
  const known = new Set([...Object.keys(en), ...Object.keys(other)]);
  return [...known].flatMap((key) => {
    const [a, b] = [en[key], (other as Catalog)[key]];
    if (!a || b === undefined) return [`${key}: ${a ? 'missing' : 'not in English'}`];
    if (forms(b).some((text) => !text.trim())) return [`${key}: empty`];
    return slots(a) === slots(b) ? [] : [`${key}: placeholders ${slots(a)} against ${slots(b)}`];
  });
}
