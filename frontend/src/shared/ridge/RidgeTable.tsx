import { dayShort, type LocalDate } from '../dates';
import { localeTag } from '../words/mechanism';
import { s } from '../words/shared';
import type { RidgeWeek } from './computeRidge';

function doneWords(week: RidgeWeek, today: LocalDate, show: (load: number) => string): string {
  if (week.starts_on > today) return s('ridgeToCome');
  if (week.heard === 'none') return s('ridgeNotHeard');
  const load = show(week.done_load);
  return week.heard === 'part' ? s('ridgePartHeard', { load }) : load;
}

/** The numbers of the ridge: heights of two pictures may not be compared, these may. */
export function RidgeTable({ weeks, today }: { weeks: readonly RidgeWeek[]; today: LocalDate }) {
  const format = new Intl.NumberFormat(localeTag(), { maximumFractionDigits: 0 });
  const show = (load: number) => format.format(load);
  return (
    <details>
      <summary>{s('ridgeTable')}</summary>
      <table class="plain">
        <caption class="note">{s('ridgeLoadNote')}</caption>
        <thead>
          <tr>
            <th scope="col">{s('ridgeWeek')}</th>
            <th scope="col">{s('ridgePlanned')}</th>
            <th scope="col">{s('ridgeDone')}</th>
          </tr>
        </thead>
        <tbody>
          {weeks.map((week) => (
            <tr key={week.starts_on}>
              <th scope="row">{dayShort(week.starts_on)}</th>
              <td>{show(week.planned_load)}</td>
              <td>{doneWords(week, today, show)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
