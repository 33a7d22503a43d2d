/** What a day asks for: which sessions are today's, which of this week are still open, and what comes next. */
import { addDays, mondayOf, sundayOf, type LocalDate } from '../../shared/dates';
import type { ProgramContent } from '../../shared/program';
import type { Planned } from './plan';
import { isClosed, NOTHING, standing, type Progress } from './progress';

export type ProgressOf = (planned_id: string) => Progress;
export const progressIn = (all: ReadonlyMap<string, Progress>): ProgressOf => (id) => all.get(id) ?? NOTHING;

export interface DayPlan {
  kind: 'none' | 'before' | 'over' | 'running';
  /** Sessions planned for this day, rest left away. */
  today: Planned[];
  /** Earlier in this week, their window still runs, not finished. */
  open: Planned[];
  /** The first one planned after this day. */
  next: Planned | null;
  /** A rest day that the plan names. */
  rest: Planned | null;
}
const EMPTY: DayPlan = { kind: 'none', today: [], open: [], next: null, rest: null };

/** Last day on which the program asks for something; null when neither an end nor a goal is known. */
export function lastDay(content: ProgramContent): LocalDate | null {
  return content.ends_on ?? (content.goal ? addDays(content.goal.date, -1) : null);
}

export const isWork = (planned: Planned): boolean => planned.session.kind !== 'rest';

/** The days in which a planned session counts: its ISO week, or its own day where the plan says so. */
export function windowOf({ day }: Planned): [first: LocalDate, last: LocalDate] {
  return day.fixed_day ? [day.date, day.date] : [mondayOf(day.date), sundayOf(day.date)];
}
export const isInWindow = (planned: Planned, date: LocalDate): boolean => {
  const [first, last] = windowOf(planned);
  return first <= date && date <= last;
};

/** `content` is the newest program; `all` the whole plan with the versions its parts stand under. */
export function dayPlan(content: ProgramContent | null, all: readonly Planned[], progress: ProgressOf, date: LocalDate): DayPlan {
  if (!content) return EMPTY;
  const work = all.filter(isWork);
  const isOpen = (planned: Planned) =>
    planned.day.date < date && isInWindow(planned, date) && !isClosed(planned, progress(planned.planned_id)) &&
    standing(planned.session, progress(planned.planned_id)) !== 'done';
  const end = lastDay(content);
  return {
    kind: date < content.starts_on ? 'before' : end !== null && date > end ? 'over' : 'running',
    today: work.filter((planned) => planned.day.date === date),
    open: work.filter(isOpen),
    next: work.find((planned) => planned.day.date > date) ?? null,
    rest: all.find((planned) => planned.day.date === date && !isWork(planned)) ?? null,
  };
}

/** Which session the page opens with: begun but not finished first, then the first of today that is not finished, then the last of today. */
export function mainSession(plan: DayPlan, progress: ProgressOf): Planned | null {
  const waiting = plan.today.filter((planned) => !isClosed(planned, progress(planned.planned_id)));
  const begun = waiting.find((planned) => standing(planned.session, progress(planned.planned_id)) !== 'none');
  return begun ?? waiting[0] ?? plan.today[plan.today.length - 1] ?? null;
}
