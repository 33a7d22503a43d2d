import { makeWords } from '../../shared/words/mechanism';
import en from '../words/en/own';

/** The words of the practice's own exercises and of the pose editor. */
export const o = makeWords(en, { de: () => import('../words/de/own') });

/** The word of a code that the server may add to; a code that has none yet is shown as it is. */
export function named(prefix: 'fault' | 'num' | 'joint' | 'contact', code: string): string {
  const key = `${prefix}_${code.replaceAll(' ', '_')}`;
  return key in en ? (o as (key: string) => string)(key) : code;
}
