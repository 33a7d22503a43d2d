import type { Translation } from '../../shared/words/mechanism';
import care from './de/care';
import frame from './de/frame';
import health from './de/health';
import kit from './de/kit';
import pages from './de/pages';
import session from './de/session';
import walk from './de/walk';
import type en from './en';

const de: Translation<typeof en> = { ...frame, ...session, ...walk, ...care, ...health, ...pages, ...kit };
export default de;
