/** An exercise of the library, as the server sends it. */
import type { Read, Schemas } from '../api/types';

/** One rung of the ladder; `short` is a caption for a narrow place and may be empty. */
export type Variant = Read<Schemas['Variant'], { kit: string[] }>;
export type Usual = Variant['dose'];
/** `ladder`: easiest first. */
export type Entry = Read<Schemas['Exercise'], { trains: string[]; loads: string[]; ladder: Variant[] }>;

/** The library is written in English; a practice writes its own in whatever language it likes. */
export const languageOf = (entry: Entry): 'en' | undefined => (entry.own ? undefined : 'en');

export type Library = ReadonlyMap<string, Entry>;

export const toLibrary = (items: readonly Entry[]): Library => new Map(items.map((entry) => [entry.code, entry]));

export const variantOf = (entry: Entry | undefined, variant: string): Variant | undefined =>
  entry?.ladder.find((rung) => rung.variant === variant);

/** Kit that other kit can stand in for, and what every house has: the same as the server's rule, so that the choice agrees with its check. */
const STANDS_IN: Readonly<Record<string, string>> = { step: 'stairs', pillow: 'towel', mat: 'towel' };
const EVERYWHERE: readonly string[] = ['wall'];

/** What is needed and not in the house. */
export function missingKit(needs: readonly string[], house: readonly string[]): string[] {
  const has = (kit: string | undefined) => kit !== undefined && (EVERYWHERE.includes(kit) || house.includes(kit));
  return needs.filter((kit) => !has(kit) && !has(STANDS_IN[kit]));
}
