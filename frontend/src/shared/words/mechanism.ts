/**
 * Words in more than one language. A catalog is a plain object of whole sentences; English gives the keys and the placeholders,
 * every other language must have the same. `{name}` is filled in; an entry with plural forms is chosen by its `n`.
 */
import { signal } from '@preact/signals';

export const LANGUAGES = { en: 'English', de: 'Deutsch' } as const;
export type Language = keyof typeof LANGUAGES;

export type Plural = { one: string; other: string };
export type Entry = string | Plural;
export type Catalog = Record<string, Entry>;
/** What a translation must hold: the same keys, a sentence for a sentence, plural forms for plural forms. */
export type Translation<C extends Catalog> = { [K in keyof C]: C[K] extends string ? string : Plural };

type Slots<S> = S extends `${string}{${infer Name}}${infer Rest}` ? Name | Slots<Rest> : never;
type Named<C extends Catalog, K extends keyof C> = C[K] extends string ? Slots<C[K]> : Slots<C[K][keyof C[K]]> | 'n';
type Values<Names extends string> = { [N in Names]: N extends 'n' ? number : string | number };
type Args<C extends Catalog, K extends keyof C> = [Named<C, K>] extends [never] ? [] : [values: Values<Named<C, K>>];

const STORED_AS = 'steadfoot.language';
/** The language now shown. Reading it in a component makes the component follow a change. */
export const language = signal<Language>('en');
const loaders: ((to: Language) => Promise<void>)[] = [];

function isLanguage(tag: string | null | undefined): tag is Language {
  return tag != null && tag in LANGUAGES;
}

/** The first language of the person's list that we have, by its primary tag; else English. */
export function chooseLanguage(saved: string | null, preferred: readonly string[]): Language {
  if (isLanguage(saved)) return saved;
  return preferred.map((tag) => tag.toLowerCase().split('-')[0]).find(isLanguage) ?? 'en';
}

function remembered(): string | null {
  try {
    return localStorage.getItem(STORED_AS);
  } catch {
    return null; // storage refused: the browser's own list decides
  }
}

function remember(to: Language): void {
  try {
    localStorage.setItem(STORED_AS, to);
  } catch {
    // storage refused: the choice lasts until the page is closed
  }
}

async function show(to: Language): Promise<void> {
  await Promise.all(loaders.map((load) => load(to)));
  language.value = to;
  document.documentElement.lang = to;
}

/** Call once before the first drawing. */
export const startLanguage = (): Promise<void> => show(chooseLanguage(remembered(), navigator.languages));

/** The person's own choice; kept on this device. */
export async function setLanguage(to: Language): Promise<void> {
  await show(to);
  remember(to);
}

/** The tag for Intl: the region of the person's own settings where it belongs to the language shown (de -> de-CH). */
export function localeTag(): string {
  const own = typeof navigator === 'undefined' ? [] : navigator.languages;
  return own.find((tag) => tag.toLowerCase().split('-')[0] === language.value) ?? language.value;
}

/** Making one of Intl's helpers takes about a millisecond on a slow phone, and a page says a hundred things. */
function onePerTag<T>(make: (tag: string) => T): (tag: string) => T {
  const made = new Map<string, T>();
  return (tag) => {
    const found = made.get(tag) ?? make(tag);
    made.set(tag, found);
    return found;
  };
}
const numberFormat = onePerTag((tag) => new Intl.NumberFormat(tag));
const pluralRules = onePerTag((tag) => new Intl.PluralRules(tag));

function fill(text: string, values: Record<string, string | number>): string {
  // A German date may end with a full stop, and the sentence's own then makes two.
  return text.replace(/\{(\w+)\}(\.?)/g, (whole, name: string, stop: string) => {
    const value = values[name];
    const said = typeof value === 'number' ? numberFormat(localeTag()).format(value) : value;
    return said == null ? whole : said.endsWith('.') ? said : said + stop;
  });
}

export function say(entry: Entry, values: Record<string, string | number>, tag: string): string {
  if (typeof entry === 'string') return fill(entry, values);
  const form = pluralRules(tag).select(Number(values.n ?? 0));
  return fill(form === 'one' ? entry.one : entry.other, values);
}

export type Say<C extends Catalog> = <K extends keyof C & string>(key: K, ...args: Args<C, K>) => string;

/**
 * Makes the function that speaks a catalog: `const t = makeWords(en, { de: () => import('./de') })`, then `t('saved', { n: 3 })`.
 * Other languages are loaded when they are first wanted; English is always there.
 */
export function makeWords<const C extends Catalog>(
  en: C,
  others: Record<Exclude<Language, 'en'>, () => Promise<{ default: Translation<C> }>>,
): Say<C> {
  const known: Partial<Record<Language, Translation<C>>> = {};
  loaders.push(async (to) => {
    if (to !== 'en') known[to] ??= (await others[to]()).default;
  });
  return (key, ...args) => {
    const tag = language.value;
    const entry = (known[tag] ?? en)[key] as Entry;
    return say(entry, (args[0] ?? {}) as Record<string, string | number>, tag);
  };
}
