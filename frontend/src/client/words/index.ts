import { makeWords } from '../../shared/words/mechanism';
import en from './en';

/** The phone app's words: `t('today')`. */
export const t = makeWords(en, { de: () => import('./de') });
