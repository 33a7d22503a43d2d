import { useState } from 'preact/hooks';
import { addDays, dayAndMonth, daysBetween, type LocalDate } from '../../shared/dates';
import { Button } from '../form/Button';
import { Press } from '../form/bare';
import { Doing, Looking, useMay } from '../rights/Needs';
import { t } from '../words';
import { carryBy, carryByKey, dragFrom, hold, pickUp, putBack, putDown } from './carry';
import type { Carried, Desk } from './desk';
import { activityName, dayLabel, factsOf } from './phrases';
import { idOf, isSame } from './plan';
import type { ProposedSession, ProposedWeek } from './types';

/** The weeks as rows of days; those that lie behind are folded away. */
export function Weeks({ desk, weeks }: { desk: Desk; weeks: readonly ProposedWeek[] }) {
  const [open, setOpen] = useState(false);
  const behind = weeks.filter((week) => week.ends_on < desk.today);
  const shown = open ? weeks : weeks.slice(behind.length);
  return (
    <section aria-labelledby="sea-weeks">
      <h2 id="sea-weeks">{t('seaWeeks')}</h2>
      <Doing><p class="note soft" id="sea-how">{t('seaHow')}</p></Doing>
      {behind.length > 0 && <Looking><p><Button small aria-expanded={open} onClick={() => setOpen(!open)}>{t('seaWeeksBehind', { n: behind.length })}</Button></p></Looking>}
      {shown.map((week) => <Week key={week.ends_on} desk={desk} week={week} />)}
    </section>
  );
}

function Week({ desk, week }: { desk: Desk; week: ProposedWeek }) {
  const days = Array.from({ length: daysBetween(week.starts_on, week.ends_on) + 1 }, (_, i) => addDays(week.starts_on, i));
  const carried = desk.carried.value;
  const isIn = carried && week.sessions.some((session) => isSame(session, carried));
  return (
    <section class={`sea-week ${week.phase}`} aria-label={t('seaWeekFrom', { date: dayAndMonth(week.starts_on) })}>
      <h3>{t('seaWeekFrom', { date: dayAndMonth(week.starts_on) })} <small>{t(`seaPhase_${week.phase}`)}, {t('seaWeekLoad', { load: week.planned_load })}</small></h3>
      <ol class="sea-days">
        {days.map((date, i) => <Day key={date} desk={desk} date={date} column={7 - days.length + i + 1} sessions={week.sessions.filter((session) => session.date === date)} />)}
      </ol>
      {isIn && <InHand desk={desk} carried={carried} />}
    </section>
  );
}

interface DayProps {
  desk: Desk;
  date: LocalDate;
  column: number;
  sessions: readonly ProposedSession[];
}

function Day({ desk, date, column, sessions }: DayProps) {
  const { away } = desk.plan.value;
  const isAway = away.some(({ first, last }) => date >= first && date <= last);
  const isTarget = desk.carried.value?.to === date && desk.carried.value.date !== date;
  const isBehind = date < desk.today;
  const stays = !useMay() || isBehind;
  return (
    <li class={`sea-day ${isTarget ? 'target' : ''}`} style={{ gridColumn: column }} {...(!isBehind && { 'data-date': date })}>
      <span class="sea-date">{dayLabel(date)}</span>
      {sessions.map((session) => (stays ? <Lying key={idOf(session)} session={session} /> : <Movable key={idOf(session)} desk={desk} session={session} />))}
      {sessions.length === 0 && !isTarget && <small>{isAway ? t('seaAwayDay') : t('seaRest')}</small>}
      {isTarget && <small class="sea-ghost">{t('seaHere')}</small>}
    </li>
  );
}

const Lying = ({ session }: { session: ProposedSession }) => <p class="sea-session"><b>{activityName(session.activity)}</b> <small>{factsOf(session)}</small></p>;

function Movable({ desk, session }: { desk: Desk; session: ProposedSession }) {
  const carried = desk.carried.value;
  const inHand = carried !== null && isSame(carried, session);
  return (
    <Press
      type="button"
      id={idOf(session)}
      class={`sea-session ${session.pinned ? 'pinned' : ''}`}
      aria-pressed={inHand}
      aria-describedby="sea-how"
      onClick={() => (inHand ? putDown(desk) : pickUp(desk, session))}
      onKeyDown={(event) => carryByKey(desk, session, event)}
      onPointerDown={(event) => dragFrom(desk, session, event)}
    >
      {session.pinned && <Pin />}<b>{activityName(session.activity)}</b> <small>{factsOf(session)}</small>
    </Press>
  );
}

/** A map pin; the word stands beside it. */
const Pin = () => <svg class="sea-pin" viewBox="0 0 12 16" aria-hidden="true"><path d="M6 15V8M2.5 1h7l-1 4 2 3h-9l2-3z" /></svg>;

/** Buttons for the session in the hand: everything that keys and dragging do. */
function InHand({ desk, carried }: { desk: Desk; carried: Carried }) {
  const moved = carried.to !== carried.date;
  return (
    <div class="sea-hand ed-row" role="group" aria-label={t('seaCarrying', { what: activityName(carried.activity), date: dayLabel(carried.to) })}>
      <b>{t('seaCarrying', { what: activityName(carried.activity), date: dayLabel(carried.to) })}</b>
      <Button small onClick={() => carryBy(desk, -1)}>{t('seaEarlier')}</Button>
      <Button small onClick={() => carryBy(desk, 1)}>{t('seaDayLater')}</Button>
      {moved && <Button small kind="main" onClick={() => putDown(desk)}>{t('seaPutDown', { date: dayLabel(carried.to) })}</Button>}
      {!moved && !(carried.pinned && !carried.locked) && <Button small onClick={() => hold(desk, 'pin')}>{t('seaPin')}</Button>}
      {!moved && !carried.locked && <Button small onClick={() => hold(desk, 'lock')}>{t('seaLock')}</Button>}
      {!moved && carried.pinned && <Button small onClick={() => hold(desk, 'free')}>{t('seaUnpin')}</Button>}
      <Button small kind="quiet" onClick={() => putBack(desk)}>{t('seaBack')}</Button>
    </div>
  );
}
