import { makeWords } from '../../shared/words/mechanism';
import en from '../words/en/custody';

/** The words of the log, of the record as a whole and of how long it is kept. */
export const c = makeWords(en, { de: () => import('../words/de/custody') });

/** What was done, in words; a call that has none yet is named as it is. */
export function actionWords(action: string): string {
  const key = `act_${action}`;
  return key in en ? (c as (key: string) => string)(key) : action;
}
