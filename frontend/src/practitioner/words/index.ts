import { makeWords } from '../../shared/words/mechanism';
import en from './en';

/** The practitioner pages' words: `t('caseload')`. */
export const t = makeWords(en, { de: () => import('./de') });
