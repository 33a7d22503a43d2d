/** What a practice says to its clients: what the server takes, said before it is asked. */
import type { PracticeWords } from '../api/account';
import type { FieldErrors } from '../parts/ErrorSummary';
import { t } from '../words';

/** As the server counts them, without spaces around. House value, letters. */
export const LETTERS_MAX = 300;

export const wordsOf = ({ emergency_text, reply_time_text }: PracticeWords): PracticeWords => ({ emergency_text, reply_time_text });
export const isSame = (one: PracticeWords, other: PracticeWords): boolean =>
  one.emergency_text === other.emergency_text && one.reply_time_text === other.reply_time_text;

function problemOf(text: string, missing: string): string | undefined {
  const letters = [...text.normalize('NFC').trim()].length;
  if (letters === 0) return missing;
  return letters > LETTERS_MAX ? t('wrdLong', { max: LETTERS_MAX, n: letters }) : undefined;
}

export function errorsOf(words: PracticeWords): FieldErrors {
  const found = {
    emergency_text: problemOf(words.emergency_text, t('wrdEmergencyMissing')),
    reply_time_text: problemOf(words.reply_time_text, t('wrdReplyMissing')),
  };
  return Object.fromEntries(Object.entries(found).filter(([, text]) => text !== undefined));
}
