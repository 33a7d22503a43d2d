import { addDays, dayAndMonth } from '../../shared/dates';
import { Ridge } from '../../shared/ridge/Ridge';
import type { Editor } from './editor';
import type { Checks } from './types';
import { e } from './words';

/** The plan alone: nothing of it is done or heard yet, so today stands before its first week. */
function Picture({ weeks }: { weeks: Checks['weeks'] }) {
  const first = weeks[0]?.starts_on;
  if (!first) return null;
  const plan = weeks.map(({ starts_on, planned_load }) => ({ starts_on, planned_load: planned_load ?? 0, done_load: 0, heard: 'none' as const, due_share: null }));
  return <Ridge small weeks={plan} today={addDays(first, -1)} heardUntil={null} />;
}

/** The planned load of the weeks, as a ridge, in a sentence and as a table. */
export function LoadOfWeeks({ editor }: { editor: Editor }) {
  const weeks = editor.checker.checked.value?.checks.weeks ?? [];
  const known = weeks.filter((week) => week.planned_load !== null);
  if (weeks.length === 0) return null;
  const hardest = known.reduce((most, week) => ((week.planned_load ?? 0) > (most?.planned_load ?? -1) ? week : most), known[0]);
  return (
    <details class="ed-load">
      <summary>{hardest ? e('loadLine', { date: dayAndMonth(hardest.starts_on) }) : e('loadTitle')}</summary>
      {known.length > 1 && <Picture weeks={weeks} />}
      {hardest && <p>{e('loadHardest', { date: dayAndMonth(hardest.starts_on), load: Math.round(hardest.planned_load ?? 0) })}</p>}
      <div>
        <table class="plain">
          <caption class="sr">{e('loadTitle')}</caption>
          <thead><tr><th scope="col">{e('loadWeek')}</th><th scope="col">{e('loadSessions')}</th><th scope="col">{e('loadMinutes')}</th><th scope="col">{e('loadLoad')}</th></tr></thead>
          <tbody>
            {weeks.map((week) => (
              <tr key={week.starts_on}>
                <th scope="row">{dayAndMonth(week.starts_on)}</th>
                <td>{week.sessions}</td>
                <td>{week.minutes ?? e('notKnown')}</td>
                <td>{week.planned_load === null ? e('notKnown') : Math.round(week.planned_load)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p class="note soft">{e('loadNote')}</p>
      </div>
    </details>
  );
}
