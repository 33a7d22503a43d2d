import { dayShort } from '../../shared/dates';
import { PlannedDay } from '../../shared/marks/PlannedDay';
import type { CaseloadRow, PlannedShort } from '../api/types';
import { me } from '../api/session';
import { Button, ButtonLink } from '../form/Button';
import { Link } from '../form/Link';
import { heardWords } from '../parts/heard';
import { markOf, markWords } from '../parts/planned';
import { ratioWords } from '../parts/ratio';
import { SmallSeason } from '../parts/Season';
import { useMay } from '../rights/Needs';
import { t } from '../words';
import { happenedWords, nextStep, painWords, whoWords, type Next } from './sentences';

const LABELS = { decide: 'decide', write: 'writeTo', program: 'writeProgram', phones: 'invitePhone', look: 'look' } as const satisfies Record<Next['does'], string>;

interface RowProps {
  row: CaseloadRow;
  isFirst: boolean;
  now: Date;
  onWrite: (client: CaseloadRow['client']) => void;
}

function NextButton({ row, isFirst, onWrite }: Pick<RowProps, 'row' | 'isFirst' | 'onWrite'>) {
  const next = nextStep(row);
  const may = useMay();
  if (!next) return null;
  const kind = isFirst ? 'main' : 'other';
  // Many rows have the same button: for the ear the person's name follows the visible words.
  const label = <>{t(LABELS[may ? next.does : 'look'])}<span class="sr">: {row.client.display_name}</span></>;
  if (!next.to) return <Button small kind={kind} onClick={() => onWrite(row.client)}>{label}</Button>;
  return <ButtonLink small kind={kind} to={next.to}>{label}</ButtonLink>;
}

function Days({ days }: { days: readonly PlannedShort[] }) {
  if (days.length === 0) return <small>{t('noPlannedDays')}</small>;
  const words = days.map((day) => t('plannedDayWords', { day: dayShort(day.date), status: markWords(markOf(day)) }));
  return (
    <span class="six" role="img" aria-label={words.join('; ')} title={words.join('\n')}>
      {days.map((day, i) => <PlannedDay key={day.planned_id} state={markOf(day)} index={i} />)}
    </span>
  );
}

/** How many of the planned sessions were done. */
function Done({ adherence: { days_7, days_28 } }: Pick<CaseloadRow, 'adherence'>) {
  if (days_28.by_session.prescribed === 0) return null;
  const spans = [t('adherence7', { sessions: ratioWords(days_7.by_session) }), t('adherence28', { sessions: ratioWords(days_28.by_session) })];
  return <small class="tnum">{spans.map((span) => <span key={span}>{span}</span>)}</small>;
}

/** One person, in sentences. */
export function Row({ row, isFirst, now, onWrite }: RowProps) {
  const { client, suggestion } = row;
  const zone = me.value?.practice.time_zone ?? 'UTC';
  const pain = painWords(row.pain);
  return (
    <tr class={isFirst ? 'first' : ''}>
      <th scope="row" class="who">
        {isFirst && <b class="call">{t('first')} </b>}
        <Link to={`/clients/${client.id}`}>{client.display_name}</Link>
        <small>{whoWords(row)}</small>
      </th>
      <td class="happened">
        <p lang="en">{happenedWords(row)}</p>
        {pain && row.group !== 'needs_you' && <small>{pain}</small>}
        {row.reason.since && <small>{t('since', { date: dayShort(row.reason.since) })}</small>}
      </td>
      <td>
        <div class="suggests">{suggestion ? <p lang="en">{suggestion.sentence}</p> : <p>{t('nothingToDecide')}</p>}<NextButton row={row} isFirst={isFirst} onWrite={onWrite} /></div>
      </td>
      <td class="days">
        <Days days={row.last_days} />
        <Done adherence={row.adherence} />
        <small>{heardWords(row.last_heard_at, now, zone)}</small>
      </td>
      <td class="season">{row.ridge.weeks.length > 0 && <SmallSeason ridge={row.ridge} />}</td>
    </tr>
  );
}
