/** The practitioner pages in German, one file an area. */
import type { Translation } from '../../../shared/words/mechanism';
import type en from '../en';
import account from './account';
import caseload from './caseload';
import client from './client';
import flag from './flag';
import installation from './installation';
import intake from './intake';
import person from './person';
import progress from './progress';
import readiness from './readiness';
import season from './season';
import sheet from './sheet';
import shell from './shell';
import tests from './tests';
import timeline from './timeline';
import trip from './trip';

const de: Translation<typeof en> = { ...shell, ...sheet, ...caseload, ...client, ...person, ...flag, ...timeline, ...progress, ...season, ...intake, ...tests, ...readiness, ...trip, ...installation, ...account };
export default de;
