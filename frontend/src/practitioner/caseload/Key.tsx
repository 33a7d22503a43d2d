import { PlannedDay, type PlannedDayState } from '../../shared/marks/PlannedDay';
import { t } from '../words';

const MARKS = [
  ['done', 'keyDone'], ['partly', 'keyPartly'], ['partly_unheard', 'keyPartlyUnheard'], ['missed', 'keyMissed'],
  ['not_heard', 'keyNotHeard'], ['open', 'keyOpen'], ['to_come', 'keyToCome'],
] as const satisfies readonly (readonly [PlannedDayState, string])[];

/** What each mark of a planned day means, in a line. */
export function Key({ children }: { children?: preact.ComponentChildren }) {
  return (
    <ul class="key" aria-label={t('keyTitle')}>
      {MARKS.map(([state, word]) => <li key={state}><PlannedDay state={state} index={1} />{t(word)}</li>)}
      {children}
    </ul>
  );
}
