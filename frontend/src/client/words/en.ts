/** The phone app's words, English. Whole sentences, short, no blame; `{name}` is filled in. */
import care from './en/care';
import frame from './en/frame';
import health from './en/health';
import kit from './en/kit';
import pages from './en/pages';
import session from './en/session';
import walk from './en/walk';

const en = { ...frame, ...session, ...walk, ...care, ...health, ...pages, ...kit } as const;
export default en;
