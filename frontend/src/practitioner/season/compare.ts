/** The weeks of a program as it is beside those proposed: what each asks for, and which are the same. */
import { addDays, daysBetween, type LocalDate } from '../../shared/dates';
import { plannedSessions, type ProgramContent } from '../../shared/program';
import type { Activity, Level, Proposal } from './types';

export interface Asked {
  date: LocalDate;
  activity: Activity;
  walk: Level | null;
}
export interface WeekPair {
  starts_on: LocalDate;
  before: Asked[];
  after: Asked[];
}

const ACTIVITY = { circuit: 'strength', walk: 'walk', cardio: 'cardio' } as const;

function askedBy(content: ProgramContent): Asked[] {
  return plannedSessions(content).flatMap(({ day, session }) => {
    if (session.kind === 'rest') return [];
    const walk = session.kind === 'walk' ? { distance_km: session.distance_km, ascent_m: session.ascent_m, pack_kg: session.pack_kg } : null;
    return [{ date: day.date, activity: ACTIVITY[session.kind], walk }];
  });
}

const order = (a: Asked, b: Asked) => (`${a.date} ${a.activity}` < `${b.date} ${b.activity}` ? -1 : 1);

/** Week by week from `from` on, counted as the proposal counts its weeks; what lies before stays as it is. */
export function weekPairs(content: ProgramContent | null, proposal: Proposal, from: LocalDate): WeekPair[] {
  const before = content ? askedBy(content).filter(({ date }) => date >= from) : [];
  const after = proposal.weeks.flatMap((week) => week.sessions).filter(({ date }) => date >= from);
  const last = proposal.weeks.at(-1)?.ends_on;
  if (!last) return [];
  const weekOf = (date: LocalDate): LocalDate => addDays(last, 1 + 7 * Math.floor(daysBetween(addDays(last, 1), date) / 7));
  const starts = [...new Set([...before, ...after].map(({ date }) => weekOf(date)))].sort();
  const inWeek = (list: readonly Asked[], start: LocalDate) =>
    list.filter(({ date }) => weekOf(date) === start).map(({ date, activity, walk }) => ({ date, activity, walk })).sort(order);
  return starts.map((starts_on) => ({ starts_on, before: inWeek(before, starts_on), after: inWeek(after, starts_on) }));
}

const sameLevel = (a: Level | null, b: Level | null) => a?.distance_km === b?.distance_km && a?.ascent_m === b?.ascent_m && a?.pack_kg === b?.pack_kg;

export function isUnchanged({ before, after }: WeekPair): boolean {
  return before.length === after.length && before.every((one, i) => one.date === after[i]?.date && one.activity === after[i]?.activity && sameLevel(one.walk, after[i]?.walk ?? null));
}

export interface WeekSum {
  strength: number;
  cardio: number;
  walks: number;
  /** The longest walk of the week. */
  longest: Level | null;
}

export function sumOf(week: readonly Asked[]): WeekSum {
  const count = (activity: Activity) => week.filter((one) => one.activity === activity).length;
  const walks = week.flatMap((one) => (one.walk ? [one.walk] : []));
  const longest = walks.reduce<Level | null>((most, walk) => (most && most.distance_km >= walk.distance_km ? most : walk), null);
  return { strength: count('strength'), cardio: count('cardio'), walks: count('walk'), longest };
}
