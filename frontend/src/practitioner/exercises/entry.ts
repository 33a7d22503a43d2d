/** An exercise of the library, as the server sends it. */
import type { Sides } from '../../shared/program';

export type Usual = { reps: [number, number] } | { hold_s: [number, number] };

/** One rung of the ladder. */
export interface Variant {
  variant: string;
  name: string;
  /** Caption for a narrow place; may be empty. */
  short: string;
  kit: string[];
  how: string[];
  dose: Usual;
  load: 'none' | 'optional' | 'required';
}

export interface Entry {
  code: string;
  name: string;
  trains: string[];
  loads: string[];
  why: string;
  sides: Sides;
  cues: string[];
  faults: { see: string; instead: string }[];
  cautions: string[];
  /** Easiest first. */
  ladder: Variant[];
}

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
