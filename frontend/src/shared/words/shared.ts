import en from './en';
import { makeWords } from './mechanism';

/** Words of the shared parts: `s('open')`. */
export const s = makeWords(en, { de: () => import('./de') });
