/** What is not saved yet, kept in this browser under the practitioner's id, since a desk is shared. */
import { me } from '../api/session';
import type { Form } from './model';

export interface Kept {
  form: Form;
  /** Tag of the version that this was made from; null for a new exercise. */
  etag: string | null;
}

const nameOf = (code: string) => `steadfoot.own.${me.value?.practitioner.id ?? ''}.${code}`;
const tried = <T>(does: () => T, otherwise: T): T => {
  try {
    return does();
  } catch {
    return otherwise; // storage refused, full, or not ours to read
  }
};

/** `code` is the exercise's, or "new". */
export const kept = {
  read: (code: string): Kept | null => tried(() => JSON.parse(localStorage.getItem(nameOf(code)) ?? 'null') as Kept | null, null),
  /** False when this browser keeps nothing. */
  keep: (code: string, what: Kept): boolean => tried(() => (localStorage.setItem(nameOf(code), JSON.stringify(what)), true), false),
  clear: (code: string): void => tried(() => localStorage.removeItem(nameOf(code)), undefined),
};
