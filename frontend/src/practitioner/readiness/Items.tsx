import { outlineAt } from '../../shared/marks/outlines';
import type { ReadinessItem } from '../api/types';
import { Link } from '../form/Link';
import { Citation } from '../sources/Citation';
import { t } from '../words';
import { Bars } from './Bars';
import { closingWords, doubtWords, evidenceWords, itemWords, MARKS, subjectWords, type Mark } from './sentences';

const KINDS = { published: 'rulePublished', derived: 'ruleDerived', house: 'ruleHouse' } as const;

/** The mark as a stone in ink: solid, half, outline, dotted. The word stands beside it. */
function MarkOf({ mark }: { mark: Mark }) {
  return (
    <span class="rdy-mark">
      <svg class={`rdy-${mark}`} viewBox="0 0 76 62" aria-hidden="true">
        <path d={outlineAt(MARKS.indexOf(mark))} />
        {mark === 'near' && <path class="rdy-half" d="M6 33H72C72 46 60 54 40 55S6 48 6 33Z" />}
      </svg>
      <b>{t(`rdyMark_${mark}`)}</b>
    </span>
  );
}

/** A test leads to the tests, a check-in to its day in the person's timeline. */
function Proof({ client, one, item }: { client: string; one: ReadinessItem['evidence'][number]; item: ReadinessItem }) {
  const words = evidenceWords(one, item);
  return <Link to={one.kind === 'test' ? `/clients/${client}/tests` : `/clients/${client}?day=${one.day}`}>{words}</Link>;
}

function Sure({ client, item }: { client: string; item: ReadinessItem }) {
  return (
    <>
      {item.evidence.length === 0 && item.subject !== 'pain_at_rest' && <p class="soft">{t('rdyNoEvidence')}</p>}
      {item.evidence.length > 0 && <ul class="evidence">{item.evidence.map((one) => <li key={one.id}><Proof client={client} one={one} item={item} /></li>)}</ul>}
      <p>{doubtWords(item).join(' ')}</p>
      {item.asked !== null && (
        <details class="screen-only note">
          <summary>{t('rdyWhyLine')}<span class="sr">: {subjectWords(item)}</span></summary>
          <p>{t(KINDS[item.kind])}: <span lang="en">{item.note}.</span></p>
          <Citation code={item.source} />
        </details>
      )}
    </>
  );
}

/** Where a gap is closed by something that is done on another page. */
const PLACES: Partial<Record<ReadinessItem['closing'], string>> = { take_test: 'tests', train_and_test: 'tests', say_trip: 'trip' };

function Closing({ client, item }: { client: string; item: ReadinessItem }) {
  const words = closingWords(item).join(' ');
  const place = PLACES[item.closing];
  return <p>{place ? <Link to={`/clients/${client}/${place}`}>{words}</Link> : words}</p>;
}

function Row({ client, item }: { client: string; item: ReadinessItem }) {
  return (
    <tr>
      <th scope="row">{subjectWords(item)}<MarkOf mark={item.mark} /></th>
      <td><p>{itemWords(item)}</p><Bars item={item} /></td>
      <td><Sure client={client} item={item} /></td>
      <td><Closing client={client} item={item} /></td>
    </tr>
  );
}

/** The items as a table that reads as sentences. */
export function Items({ client, items }: { client: string; items: readonly ReadinessItem[] }) {
  return (
    <table class="readiness-items">
      <caption class="sr">{t('rdyTable')}</caption>
      <thead><tr>{(['rdyWhat', 'rdyBeside', 'rdySure', 'rdyClose'] as const).map((key) => <th key={key} scope="col">{t(key)}</th>)}</tr></thead>
      <tbody>{items.map((item) => <Row key={item.subject} client={client} item={item} />)}</tbody>
    </table>
  );
}
