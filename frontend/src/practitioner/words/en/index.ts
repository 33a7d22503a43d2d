/** The practitioner pages in English, one file an area. Terms of the trade. The editor's pages have their own catalog. */
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

export default { ...shell, ...sheet, ...caseload, ...client, ...person, ...flag, ...timeline, ...progress, ...season, ...intake, ...tests, ...readiness, ...trip, ...installation, ...account } as const;
