import type { Translation } from '../../shared/words/mechanism';
import type en from './en';

const de: Translation<typeof en> = {
  appName: 'Steadfoot',
  today: 'Heute',
  notFoundTitle: 'Diese Seite gibt es nicht',
  notFoundText: 'Der Link ist vielleicht alt. Nichts, was du gesichert hast, ist verloren.',
  goToToday: 'Zu heute',
};
export default de;
