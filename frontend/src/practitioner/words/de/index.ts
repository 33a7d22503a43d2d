/** The practitioner pages in German, one file an area. */
import type { Translation } from '../../../shared/words/mechanism';
import type en from '../en';
import caseload from './caseload';
import client from './client';
import flag from './flag';
import person from './person';
import shell from './shell';
import timeline from './timeline';

const de: Translation<typeof en> = { ...shell, ...caseload, ...client, ...person, ...flag, ...timeline };
export default de;
