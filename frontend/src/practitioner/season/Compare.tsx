import { dayAndMonth } from '../../shared/dates';
import { t } from '../words';
import { isUnchanged, weekPairs, type WeekPair } from './compare';
import type { Desk } from './desk';
import { weekWords } from './phrases';
import type { Proposal } from './types';

const Pair = ({ pair }: { pair: WeekPair }) => (
  <tr>
    <th scope="row">{t('seaWeekFrom', { date: dayAndMonth(pair.starts_on) })}</th>
    <td><span class="sea-which">{t('seaNow')}: </span>{weekWords(pair.before)}</td>
    <td><span class="sea-which">{t('seaThen')}: </span>{weekWords(pair.after)}</td>
  </tr>
);

/** What changes against the program as it is, week by week in words, before anything is taken over. */
export function Compare({ desk, season }: { desk: Desk; season: Proposal }) {
  const { content } = desk.program;
  const { starts_on } = desk.plan.value;
  const pairs = weekPairs(content, season, starts_on > desk.today ? starts_on : desk.today);
  const changed = pairs.filter((pair) => !isUnchanged(pair));
  const alike = pairs.length - changed.length;
  return (
    <details class="sea-part" open={desk.plan.value.paused !== null && changed.length > 0}>
      <summary>{t('seaCompare')}</summary>
      {!content ? <p>{t('seaCompareNone')}</p> : changed.length === 0 ? <p>{t('seaCompareSame')}</p> : (
        <>
          {alike > 0 && <p>{t('seaCompareAlike', { n: alike })}</p>}
          <table class="plain sea-compare">
            <thead><tr><td /><th scope="col">{t('seaNow')}</th><th scope="col">{t('seaThen')}</th></tr></thead>
            <tbody>{changed.map((pair) => <Pair key={pair.starts_on} pair={pair} />)}</tbody>
          </table>
        </>
      )}
    </details>
  );
}
