/** Changes of what a season is planned from. Pure: each answers a new plan. */
import { addDays, type LocalDate } from '../../shared/dates';
import type { Activity, Pin, Plan, ProposedSession, Shortfall, Start } from './types';

/** House: starting values of a season that was never planned, to be decided for each person. */
const FIRST_CHOICE = { weekdays: ['mon', 'wed', 'sat'], strength_a_week: 2, walks_a_week: 1, cardio_a_week: null, things_a_week: 2 } as const;
/** House: weeks up to a trip whose date is not known yet; six to eight are the practice. */
const WEEKS_START = 7;

export function planFrom(start: Start): Plan {
  if (start.season) return start.season;
  const { starts_on, walking, longest_day } = start;
  const trip_on = start.trip_on && start.trip_on > starts_on ? start.trip_on : addDays(starts_on, 7 * WEEKS_START);
  return { ...FIRST_CHOICE, weekdays: [...FIRST_CHOICE.weekdays], starts_on, trip_on, walking, longest_day, pins: [], away: [], accepted: [], circuits: [], paused: null };
}

type Place = Pick<Pin, 'date' | 'activity'>;
const isAt = (place: Place) => (pin: Pin) => pin.date === place.date && pin.activity === place.activity;
const withPins = (plan: Plan, pins: Pin[]): Plan => ({ ...plan, pins: pins.sort((a, b) => (a.date < b.date ? -1 : 1)) });
const others = (plan: Plan, place: Place) => plan.pins.filter((pin) => !isAt(place)(pin));

/** The session is wanted on that day and stays there. */
export function moveSession(plan: Plan, session: Place & { locked: boolean }, to: LocalDate): Plan {
  return withPins(plan, [...others(plan, session), { date: to, activity: session.activity, locked: session.locked }]);
}

export const pin = (plan: Plan, { date, activity }: Place, locked = false): Plan => withPins(plan, [...others(plan, { date, activity }), { date, activity, locked }]);
export const unpin = (plan: Plan, place: Place): Plan => withPins(plan, others(plan, place));

/** Go knowingly with less, or not any more. */
export function accept(plan: Plan, thing: Shortfall['thing'], yes: boolean): Plan {
  return { ...plan, accepted: yes ? [...plan.accepted, thing] : plan.accepted.filter((one) => one !== thing) };
}

/** So much shorter, lower or lighter a day as walks grow to in time. */
export const settleFor = (plan: Plan, short: Shortfall): Plan => ({ ...plan, longest_day: { ...plan.longest_day, [short.thing]: short.reached } });
export const tripLater = (plan: Plan, weeks: number): Plan => ({ ...plan, trip_on: addDays(plan.trip_on, 7 * weeks) });

export const addAway = (plan: Plan, first: LocalDate, last: LocalDate): Plan => ({ ...plan, away: [...plan.away, { first, last }] });
export const removeAway = (plan: Plan, place: number): Plan => ({ ...plan, away: plan.away.filter((_, i) => i !== place) });

/** Where a carried session may be put down: within the season, from today on. */
export function carriedTo(plan: Plan, today: LocalDate, date: LocalDate, days: number): LocalDate {
  const to = addDays(date, days);
  const first = plan.starts_on > today ? plan.starts_on : today;
  const last = addDays(plan.trip_on, -1);
  return to < first ? first : to > last ? last : to;
}

export const idOf = ({ date, activity }: { date: LocalDate; activity: Activity }): string => `s-${date}-${activity}`;
export const isSame = (a: Pick<ProposedSession, 'date' | 'activity'>, b: Pick<ProposedSession, 'date' | 'activity'>): boolean => a.date === b.date && a.activity === b.activity;
