import { t } from '../words';

/** A count as a word, "three", as far as the catalog has one; else as digits. */
export function countWord(n: number): string {
  return t('countWords').split('|')[n] ?? String(n);
}

/** Begins a sentence. */
export const capital = (text: string): string => text.charAt(0).toLocaleUpperCase() + text.slice(1);
export const countTitle = (n: number): string => capital(countWord(n));
