import { makeWords } from '../../shared/words/mechanism';
import en from '../words/en/editor';

/** The words of the program editor, the templates and the library: `e('publish', { number: 7 })`. */
export const e = makeWords(en, { de: () => import('../words/de/editor') });
export type Word = keyof typeof en;

/** The word of a code; a code that has none yet is shown as it is, so that nothing is hidden. */
export function coded(prefix: 'kit' | 'quality' | 'kind' | 'name' | 'weekday', code: string): string {
  const key = `${prefix}_${code}`;
  return key in en ? (e as (key: string) => string)(key) : code;
}
