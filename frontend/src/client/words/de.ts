import type { Translation } from '../../shared/words/mechanism';
import care from './de/care';
import frame from './de/frame';
import health from './de/health';
import kit from './de/kit';
import pages from './de/pages';
import session from './de/session';
import type en from './en';

const de: Translation<typeof en> = { ...frame, ...session, ...care, ...health, ...pages, ...kit };
export default de;
