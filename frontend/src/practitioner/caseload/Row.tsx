import { dayShort } from '../../shared/dates';
import { Button, ButtonLink } from '../../shared/form/Button';
import { PlannedDay } from '../../shared/marks/PlannedDay';
import { Link } from '../../shared/router';
import type { CaseloadRow, PlannedShort } from '../api/types';
import { me } from '../api/session';
import { heardWords } from '../parts/heard';
import { markOf, markWords } from '../parts/planned';
import { ratioWords } from '../parts/ratio';
import { SmallSeason } from '../parts/Season';
import { t } from '../words';
import { happenedWords, nextStep, painWords, whoWords, type Next } from './sentences';

const LABELS = {
  decide: ['decide', 'decideFor'], write: ['writeTo', 'writeToName'], program: ['writeProgram', 'writeProgramFor'],
  phones: ['invitePhone', 'invitePhoneOf'], look: ['look', 'lookAt'],
} as const satisfies Record<Next['does'], readonly [string, string]>;

function NextButton({ row, onWrite }: { row: CaseloadRow; onWrite: (client: CaseloadRow['client']) => void }) {
  const next = nextStep(row);
  if (!next) return null;
  const [label, spoken] = LABELS[next.does];
  const name = t(spoken, { name: row.client.display_name });
  const kind = row.group === 'needs_you' ? 'main' : 'other';
  // The visible words come first in the name, the person's after them.
  if (!next.to) return <Button small kind={kind} aria-label={name} onClick={() => onWrite(row.client)}>{t(label)}</Button>;
  return <ButtonLink small kind={kind} to={next.to}>{t(label)}<span class="sr"> {name.slice(t(label).length).trim()}</span></ButtonLink>;
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

interface RowProps {
  row: CaseloadRow;
  isFirst: boolean;
  now: Date;
  onWrite: (client: CaseloadRow['client']) => void;
}

/** One person, in sentences. */
export function Row({ row, isFirst, now, onWrite }: RowProps) {
  const { client, reason, adherence, suggestion } = row;
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
        <p>{happenedWords(row)}{reason.since && <span class="soft"> ({t('since', { date: dayShort(reason.since) })})</span>}</p>
        {pain && row.group !== 'needs_you' && <small>{pain}</small>}
      </td>
      <td>
        <div class="suggests"><p>{suggestion?.sentence ?? t('nothingToDecide')}</p><NextButton row={row} onWrite={onWrite} /></div>
      </td>
      <td class="days">
        <Days days={row.last_days} />
        <small>{heardWords(row.last_heard_at, now, zone)}</small>
        {row.group !== 'no_program' && (
          <small class="ratios">
            <span class="sr">{t('adherenceWhat')}: </span>
            <span>{t('adherence7', { sessions: ratioWords(adherence.days_7.by_session) })}</span>
            <span>{t('adherence28', { sessions: ratioWords(adherence.days_28.by_session) })}</span>
          </small>
        )}
      </td>
      <td class="season">{row.ridge.weeks.length > 0 && <SmallSeason ridge={row.ridge} />}</td>
    </tr>
  );
}
