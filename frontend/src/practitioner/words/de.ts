import type { Translation } from '../../shared/words/mechanism';
import type en from './en';

const de: Translation<typeof en> = {
  appName: 'Steadfoot',
  caseload: 'Betreute',
  notFoundTitle: 'Diese Seite gibt es nicht',
  notFoundText: 'Der Link ist vielleicht alt. Es wurde nichts verändert.',
  goToCaseload: 'Zu den Betreuten',
};
export default de;
