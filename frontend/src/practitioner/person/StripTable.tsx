import { placeWords } from '../../shared/body/places';
import { dayShort, type LocalDate } from '../../shared/dates';
import type { Overview, PainReport, SessionItem } from '../api/types';
import { markOf, markWords } from '../parts/planned';
import { t } from '../words';

const COLUMNS = ['tableDay', 'tableSession', 'tableStatus', 'tableSets', 'tableEffort', 'tableMinutes', 'tableLoad', 'tablePain'] as const;

interface Line { day: LocalDate; item: SessionItem | null; pain: PainReport[] }

/** One line a session, and one for a day with pain alone; a day's pain stands with its first line. Newest first. */
export function tableLines(days: readonly SessionItem[], pain: readonly PainReport[]): Line[] {
  const first = days.map(({ date }) => date).reduce((a, b) => (b < a ? b : a), '9999-12-31');
  const shown = pain.filter(({ day }) => day >= first);
  const all = [...new Set([...days.map(({ date }) => date), ...shown.map(({ day }) => day)])].sort().reverse();
  return all.flatMap((day) => {
    const items = days.filter(({ date }) => date === day);
    const hurt = shown.filter((report) => report.day === day);
    return (items.length > 0 ? items : [null]).map((item, i) => ({ day, item, pain: i === 0 ? hurt : [] }));
  });
}

export const painSentence = (report: PainReport): string =>
  t('tablePainItem', { rating: report.rating, place: placeWords({ region: report.region, side: report.side, ...(report.aspect && { aspect: report.aspect }) }), when: t(`when_${report.when}`) });

function loadWords({ done_load, planned_load }: SessionItem): string {
  if (done_load === null) return planned_load === null ? '' : t('tableLoadOf', { done: '–', planned: Math.round(planned_load) });
  return planned_load === null ? String(Math.round(done_load)) : t('tableLoadOf', { done: Math.round(done_load), planned: Math.round(planned_load) });
}

function statusWords(item: SessionItem): string {
  const words = markWords(markOf(item));
  return item.done_on && item.done_on !== item.date ? `${words}, ${t('tableDoneOn', { day: dayShort(item.done_on) })}` : words;
}

function Cells({ item }: { item: SessionItem | null }) {
  if (!item) return <><td /><td /><td /><td /><td /><td /></>;
  return (
    <>
      <td>{item.name}</td>
      <td>{statusWords(item)}</td>
      <td>{t('tableSetsOf', { done: item.sets_done, prescribed: item.sets_prescribed })}</td>
      <td>{item.effort}</td>
      <td>{item.minutes}</td>
      <td>{loadWords(item)}</td>
    </>
  );
}

/** The same as the chart, in words and numbers. */
export function StripTable({ overview }: { overview: Overview }) {
  return (
    <details>
      <summary>{t('sameAsTable')}</summary>
      <div class="table-scroll wide" tabIndex={0} role="group" aria-label={t('stripTitle')}>
        <table class="plain">
          <thead><tr>{COLUMNS.map((column) => <th key={column} scope="col">{t(column)}</th>)}</tr></thead>
          <tbody>
            {tableLines(overview.days, overview.pain).map(({ day, item, pain }) => (
              <tr key={item?.planned_id ?? day}>
                <th scope="row">{dayShort(day)}</th>
                <Cells item={item} />
                <td>{pain.map((report) => <div key={report.event_id}>{painSentence(report)}</div>)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
