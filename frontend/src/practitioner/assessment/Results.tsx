import { dayShort } from '../../shared/dates';
import { recordTest } from '../api/calls';
import { refreshAbout } from '../api/resource';
import type { TestItem, TestResult } from '../api/types';
import { Button } from '../form/Button';
import { FailureLine, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { shortCitation } from '../person/answers';
import { Doing } from '../rights/Needs';
import { t } from '../words';
import { takeBack } from './TakeTest';

type Reference = NonNullable<TestResult['reference']>;

/** "19 to 25 s", or the one bound or middle that there is. */
function normValues({ low, middle, high, grade }: Reference, unit: string): string {
  const bounds = [low, high].filter((one) => one !== null);
  const numbers = bounds.length > 0 ? bounds.join('–') : middle === null ? '' : String(middle);
  return [numbers && `${numbers} ${unit}`, grade].filter(Boolean).join(', ');
}

function Norm({ one }: { one: TestResult }) {
  const { reference, why_no_norm: why } = one;
  if (!reference) return <span>{t('tstNoNorm', { why: why ?? '' })}</span>;
  return (
    <>
      <span lang="en">{t('tstNormOf', { group: reference.group, values: normValues(reference, one.unit) })}</span>
      <br /><span class="soft">{t(`kind_${reference.kind}`)}: {shortCitation(reference.source_work)}, <span lang="en">{reference.source_work.population}</span></span>
    </>
  );
}

const again = ({ code, value, side, taken_on, protocol, note }: TestResult) => ({ code, value, side, taken_on, protocol, note });

function Row({ one, client, name }: { one: TestResult; client: string; name: string }) {
  const { failure, run } = useWrite();
  const putBack = () => run(async () => {
    await recordTest(client, again(one));
    await refreshAbout(client);
    say(t('tstBack'));
  });
  const withdraw = () => run(async () => {
    await takeBack(client, one.id);
    say(t('tstWithdrawn'), () => void putBack());
  });
  const day = dayShort(one.taken_on);
  return (
    <tr>
      <th scope="row">{day}{one.side && `, ${t(`tst_${one.side}`)}`}</th>
      <td class="tnum">{one.value} <span lang="en">{one.unit}</span>{one.note && <><br /><span class="soft">{one.note}</span></>}</td>
      <td lang="en">{one.reference ? one.reading : null}</td>
      <td><Norm one={one} /></td>
      <Doing><td><Button small kind="quiet" onClick={() => void withdraw()}>{t('tstWithdraw')}<span class="sr">: {name}, {day}</span></Button><FailureLine failure={failure} /></td></Doing>
    </tr>
  );
}

function Compared({ item }: { item: TestItem }) {
  const { change, symmetry, trend } = item;
  return (
    <ul class="facts">
      {change && <li>{t('tstChange')}: <b>{t(change.is_real ? 'tstReal' : 'tstNotReal')}</b>. <span lang="en">{change.words}</span></li>}
      {symmetry && <li>{t('tstSymmetry')}: <span lang="en">{symmetry.words}</span></li>}
      {trend && <li>{t('tstTrend')}: <span lang="en">{trend.words}</span></li>}
    </ul>
  );
}

/** Results of each test, newest first, beside norm, other side and the time before. */
export function Results({ client, items }: { client: string; items: readonly TestItem[] }) {
  return (
    <section aria-labelledby="results">
      <h2 id="results">{t('tstResults')}</h2>
      {items.length === 0 && <p class="soft">{t('tstNone')}</p>}
      {items.map((item) => (
        <div key={item.code}>
          <h3 lang="en">{item.name}</h3>
          <Compared item={item} />
          <div class="table-scroll" role="region" aria-label={item.name} tabIndex={0}>
            <table class="plain">
              <thead><tr>{(['tstDate', 'tstResult', 'tstReading', 'tstNorm'] as const).map((key) => <th key={key} scope="col">{t(key)}</th>)}<Doing><th scope="col">{t('tstWithdraw')}</th></Doing></tr></thead>
              <tbody>{item.results.map((one) => <Row key={one.id} one={one} client={client} name={item.name} />)}</tbody>
            </table>
          </div>
        </div>
      ))}
    </section>
  );
}
