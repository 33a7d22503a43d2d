/** The season's weeks as loads, planned and done, as the ridge draws them. Same counting as the practice's (rules of the ridge). */
import { addDays, mondayOf, type LocalDate } from '../../shared/dates';
import { setCount, type Session } from '../../shared/program';
import type { RidgeWeek } from '../../shared/ridge/computeRidge';
import { isWork } from '../session/day';
import { plannedLoad } from '../session/estimate';
import type { Planned } from '../session/plan';
import { laidCount, type Progress } from '../session/progress';

interface Load {
  day: LocalDate;
  planned: number;
  done: number;
  touched: boolean;
}

/** Effort times minutes where the person said both; else its share of the plan. */
function doneLoad(session: Session, progress: Progress): number {
  if (progress.effort !== null && progress.minutes !== null) return progress.effort * progress.minutes;
  return plannedLoad(session) * (laidCount(session, progress) / Math.max(1, setCount(session)));
}

const EXTRA = 'extra.';

export function loadsOf(plan: readonly Planned[], progress: ReadonlyMap<string, Progress>): Load[] {
  const planned = plan.filter(isWork).map(({ planned_id, day, session }): Load => {
    const own = progress.get(planned_id);
    return { day: day.date, planned: plannedLoad(session), done: own ? doneLoad(session, own) : 0, touched: own !== undefined };
  });
  const extra = [...progress].filter(([id]) => id.startsWith(EXTRA)).map(([id, own]): Load => ({
    day: id.slice(EXTRA.length), planned: 0, done: (own.effort ?? 0) * (own.minutes ?? 0), touched: true,
  }));
  return [...planned, ...extra.filter((load) => load.done > 0)];
}

const sum = (loads: readonly Load[], part: 'planned' | 'done') => loads.reduce((total, load) => total + load[part], 0);

/** More than 0 to 1; null while nothing of the running week is due. */
function dueShare(loads: readonly Load[], today: LocalDate): number | null {
  const due = sum(loads.filter((load) => load.touched || load.day < today), 'planned');
  return due > 0 ? due / sum(loads, 'planned') : null;
}

/**
 * From the first to the last week with a session in it. `since` is the day this phone was paired: what was done before on another
 * phone is not known here, and is drawn so.
 */
export function ridgeWeeks(loads: readonly Load[], today: LocalDate, since: LocalDate): RidgeWeek[] {
  const mondays = loads.filter((load) => load.planned > 0).map((load) => mondayOf(load.day)).sort();
  const last = mondays.at(-1);
  const weeks: RidgeWeek[] = [];
  for (let monday = mondays[0]; monday && last && monday <= last; monday = addDays(monday, 7)) {
    const own = loads.filter((load) => mondayOf(load.day) === monday);
    const running = monday === mondayOf(today);
    const known = addDays(monday, 6) >= since || own.some((load) => load.touched);
    weeks.push({
      starts_on: monday, planned_load: sum(own, 'planned'), done_load: sum(own, 'done'),
      heard: !known || monday > today ? 'none' : running ? 'part' : 'all',
      due_share: running ? dueShare(own, today) : null,
    });
  }
  return weeks;
}

/** Spans before this phone was paired of which it holds nothing. */
export function unknownSpans(weeks: readonly RidgeWeek[], today: LocalDate): { from: LocalDate; to: LocalDate }[] {
  return weeks
    .filter((week) => week.heard === 'none' && week.starts_on < mondayOf(today))
    .map((week) => ({ from: week.starts_on, to: addDays(week.starts_on, 6) }));
}
