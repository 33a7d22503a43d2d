/**
 * How many minutes a session should take, where the plan does not say. The same house constants as the practice uses
 * (rules of dose), so that the season's ridge looks the same on both sides.
 */
import type { Prescription, Session } from '../../shared/program';
import type { Event } from '../../outbox/events';
import { minutesFromStones } from './log';

/** Lowering half of a repetition where no tempo is prescribed. House value, seconds. */
const LOWERING_S = 2;
/** Lifting half of a repetition with its turn. House value, seconds. */
const LIFTING_S = 2;
/** Getting into place for one side of one set. House value, seconds. */
const SET_UP_S = 10;
/** Walking with a pack on paths. House value, km/h. */
const WALK_KMH = 4;
/** One hour more for each so many metres up. A walkers' rule of thumb, m/h. */
const CLIMB_M_PER_H = 600;

function setSeconds(dose: Prescription): number {
  const reps = ((dose.reps_low ?? 0) + (dose.reps_high ?? 0)) / 2;
  const work = dose.hold_s ?? reps * (LIFTING_S + (dose.tempo_down_s ?? LOWERING_S));
  return (dose.sides === 'each' ? 2 : 1) * (SET_UP_S + work);
}

/** Whole minutes, rounded up; null where nothing tells. */
export function expectedMinutes(session: Session): number | null {
  if (session.kind === 'rest') return null;
  if (session.expected_minutes !== null) return session.expected_minutes;
  if (session.kind === 'walk') return Math.ceil(60 * (session.distance_km / WALK_KMH + session.ascent_m / CLIMB_M_PER_H));
  if (session.kind === 'cardio' || session.prescriptions.length === 0) return null;
  const round = session.prescriptions.reduce((sum, one) => sum + setSeconds(one) + (one.rest_s ?? 0), 0);
  return Math.ceil((session.rounds * round - (session.prescriptions.at(-1)?.rest_s ?? 0)) / 60);
}

/** Effort (0 to 10) times minutes; 0 where nothing tells. */
export const plannedLoad = (session: Session): number =>
  session.kind === 'rest' ? 0 : session.expected_effort * (expectedMinutes(session) ?? 0);

/** Stones that were all tapped within less than this part of the expected time were tapped afterwards. House value. */
const TAPPED_AFTERWARDS = 1 / 3;

/** What the question about minutes begins with, and where it comes from. */
export function firstMinutes(events: readonly Event[], planned_id: string, session: Session): { minutes: number; from: 'stones' | 'plan' } {
  const [stones, planned] = [minutesFromStones(events, planned_id), expectedMinutes(session)];
  if (stones !== null && stones >= (planned ?? 0) * TAPPED_AFTERWARDS) return { minutes: stones, from: 'stones' };
  return { minutes: planned ?? stones ?? 0, from: 'plan' };
}
