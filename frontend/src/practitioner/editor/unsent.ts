/**
 * Work that has not reached the server, kept in this browser until it has. Under the practitioner's id, since a desk is shared;
 * taken out as soon as the server has it, since it is about a person's health.
 */
import type { DraftBody } from './types';

export interface Unsent {
  /** Null: the draft is to be thrown away. */
  draft: DraftBody | null;
  /** Tag of the server's draft that this was made from; null when there was none. */
  etag: string | null;
  /** RFC 3339. */
  at: string;
}

export interface UnsentStore {
  read(): Unsent | null;
  /** False when this browser keeps nothing. */
  keep(unsent: Unsent): boolean;
  clear(): void;
}

export function unsentIn(storage: Storage, practitioner: string, client: string): UnsentStore {
  const name = `steadfoot.unsent.${practitioner}.${client}`;
  const tried = <T>(does: () => T, otherwise: T): T => {
    try {
      return does();
    } catch {
      return otherwise; // storage refused, full, or not ours to read
    }
  };
  return {
    read: () => tried(() => JSON.parse(storage.getItem(name) ?? 'null') as Unsent | null, null),
    keep: (unsent) => tried(() => (storage.setItem(name, JSON.stringify(unsent)), true), false),
    clear: () => tried(() => storage.removeItem(name), undefined),
  };
}
