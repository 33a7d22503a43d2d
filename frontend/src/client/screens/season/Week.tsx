import { addDays, dayName, dayShort, type LocalDate } from '../../../shared/dates';
import { PlannedDay, type PlannedDayState } from '../../../shared/marks/PlannedDay';
import { setCount } from '../../../shared/program';
import { Link } from '../../../shared/router';
import { answersWords, sessionNote, sessionPath } from '../../parts/names';
import { day, isFromEarlier, plan, progressFor } from '../../phone';
import { since } from '../../season/since';
import { isWork } from '../../session/day';
import type { Planned } from '../../session/plan';
import { laidCount, standing } from '../../session/progress';
import { t } from '../../words';

type Told = 'done' | 'partly' | 'left_out' | 'today' | 'open' | 'elsewhere' | 'planned';

/** What one can truly say of a planned session on this phone. Never "missed": it is still open. */
function told(planned: Planned): Told {
  const stands = standing(planned.session, progressFor(planned.planned_id));
  if (stands !== 'none') return stands;
  const { date } = planned.day;
  if (date === day.value) return 'today';
  if (date > day.value) return 'planned';
  return date < since.value ? 'elsewhere' : 'open';
}

const MARK: Record<Told, PlannedDayState> = {
  done: 'done', partly: 'partly', left_out: 'left_out', today: 'open', open: 'open', elsewhere: 'not_heard', planned: 'to_come',
};
const WORD = {
  done: ['weekDone', 'done'], partly: ['weekPartly', 'done'], left_out: ['weekLeftOut', ''], today: ['weekToday', 'strong'],
  open: ['weekOpen', 'strong'], elsewhere: ['weekElsewhere', 'soft'], planned: ['weekPlanned', 'planned'],
} as const satisfies Record<Told, readonly [string, string]>;

function nameWords(planned: Planned): string {
  const laid = laidCount(planned.session, progressFor(planned.planned_id));
  const { name, kind } = planned.session;
  return laid > 0 && kind === 'circuit' ? t('laidOf', { name, laid, all: setCount(planned.session) }) : name;
}

function Actions({ planned, state }: { planned: Planned; state: Told }) {
  const { date } = planned.day;
  const { finished } = progressFor(planned.planned_id);
  const go = (to: string, word: 'goOn' | 'begin' | 'look' | 'addLater' | 'correct') => (
    <Link class="tap" to={to}>{t(word)}<span class="sr">: {planned.session.name}, {dayShort(date)}</span></Link>
  );
  if (finished) return go(`${sessionPath(planned.planned_id)}/after`, 'correct');
  if (date > day.value) return go(sessionPath(planned.planned_id), 'look');
  if (date === day.value) return go(sessionPath(planned.planned_id), state === 'today' ? 'begin' : 'goOn');
  return go(`/catch-up/${planned.planned_id}`, 'addLater');
}

function Line({ planned }: { planned: Planned }) {
  const progress = progressFor(planned.planned_id);
  const state = told(planned);
  const [word, look] = WORD[state];
  return (
    <li>
      <span class="day">{dayName(planned.day.date)}</span>
      <PlannedDay state={MARK[state]} index={Number(planned.planned_id.slice(8, 10))} />
      <span>
        <span class={look}>{t(word)}</span> {nameWords(planned)}
        <small>{progress.finished ? answersWords(progress) : sessionNote(planned.session)}</small>
        {isFromEarlier(planned.planned_id) && <small>{t('fromEarlier')}</small>}
        <Actions planned={planned} state={state} />
      </span>
    </li>
  );
}

/** One week, day by day; rest stands there too. */
export function Week({ monday }: { monday: LocalDate }) {
  const own = plan.value.filter((planned) => planned.day.date >= monday && planned.day.date <= addDays(monday, 6));
  if (own.length === 0) return <p>{t('weekEmpty')}</p>;
  return (
    <ol class="week">
      {own.map((planned) => (isWork(planned) ? <Line key={planned.planned_id} planned={planned} /> : (
        <li key={planned.planned_id}>
          <span class="day">{dayName(planned.day.date)}</span>
          <span />
          <span><span class="planned">{t('weekRest')}</span> {planned.session.name}</span>
        </li>
      )))}
    </ol>
  );
}
