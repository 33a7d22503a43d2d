/** Finding exercises in the library. */
import { missingKit, type Entry } from './entry';

export interface Filter {
  /** Words of the name or the code, in any order. */
  text: string;
  /** A quality that is trained; empty: any. */
  trains: string;
  /** A region of the body that must not be loaded; empty: any. */
  spares: string;
  /** What the house has; null: whatever is needed. */
  kit: readonly string[] | null;
}
export const ANY: Filter = { text: '', trains: '', spares: '', kit: null };

const plain = (text: string): string => text.toLocaleLowerCase('en').normalize('NFD').replace(/\p{M}/gu, '').replaceAll('-', ' ');

/** The variants that can be done with this kit, easiest first. */
export const fitting = (entry: Entry, kit: readonly string[]) => entry.ladder.filter((rung) => missingKit(rung.kit, kit).length === 0);

/** What may be chosen anew. */
export const offered = (entries: Iterable<Entry>): Entry[] => [...entries].filter((entry) => !entry.own?.archived);

function fits(entry: Entry, { text, trains, spares, kit }: Filter): boolean {
  // The code too: names are in the client's words, and a practitioner may type the trade's.
  const words = plain(`${entry.name} ${entry.code}`);
  if (!plain(text).split(/\s+/).every((word) => words.includes(word))) return false;
  if (trains && !entry.trains.includes(trains)) return false;
  if (spares && entry.loads.includes(spares)) return false;
  return kit === null || fitting(entry, kit).length > 0;
}

/** Those that fit every part of the filter, by name. */
export function find(entries: Iterable<Entry>, filter: Filter): Entry[] {
  return [...entries].filter((entry) => fits(entry, filter)).sort((a, b) => a.name.localeCompare(b.name, 'en'));
}

/** Every quality and every region that some exercise names, in the order of the alphabet of their codes. */
export const qualitiesOf = (entries: Iterable<Entry>): string[] => [...new Set([...entries].flatMap((entry) => entry.trains))].sort();
export const regionsOf = (entries: Iterable<Entry>): string[] => [...new Set([...entries].flatMap((entry) => entry.loads))].sort();
