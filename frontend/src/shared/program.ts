/** A program version as both apps read it: one immutable JSON document (decision 0002). */
import type { LocalDate } from './dates';

export type Sides = 'each' | 'both';

/** Another movement that may be done instead, with a dose of its own (decision 0007). */
export interface Alternative {
  exercise: string;
  variant: string;
  sides: Sides;
  reps_low: number | null;
  reps_high: number | null;
  hold_s: number | null;
  load_kg: number | null;
  reason: string;
}
export interface Prescription {
  key: string;
  exercise: string;
  variant: string;
  sides: Sides;
  /** Either repetitions or a hold, never both, never neither. */
  reps_low: number | null;
  reps_high: number | null;
  hold_s: number | null;
  load_kg: number | null;
  tempo_down_s: number | null;
  rest_s: number | null;
  note: string;
  /** Programs from before there were any do not say. */
  alternatives?: Alternative[];
}

/** What stands in the place of a prescription when an alternative is done; its rest stays. */
export function instead(prescribed: Prescription, { reason: _, ...other }: Alternative): Prescription {
  return { ...prescribed, ...other, tempo_down_s: null, note: '', alternatives: [] };
}

interface SessionBase {
  key: string;
  name: string;
  note: string;
}
interface Effortful extends SessionBase {
  /** 0 to 10. */
  expected_effort: number;
  expected_minutes: number | null;
}
export interface Circuit extends Effortful {
  kind: 'circuit';
  rounds: number;
  prescriptions: Prescription[];
}
export interface Walk extends Effortful {
  kind: 'walk';
  distance_km: number;
  ascent_m: number;
  descent_m: number;
  pack_kg: number;
}
export interface Cardio extends Effortful {
  kind: 'cardio';
  activity: string;
}
export interface Rest extends SessionBase {
  kind: 'rest';
}
export type Session = Circuit | Walk | Cardio | Rest;

export interface Day {
  date: LocalDate;
  session: string;
  fixed_day: boolean;
}

export interface ProgramContent {
  title: string;
  goal: { name: string; date: LocalDate } | null;
  starts_on: LocalDate;
  ends_on: LocalDate | null;
  sessions: Session[];
  days: Day[];
  /** What its season was planned from; only the season's page reads it. */
  season?: unknown;
}

export interface PlannedSession {
  planned_id: string;
  day: Day;
  session: Session;
}

/** Every entry of `days` with its `planned_id`: the date, a dot and its place within that date. */
export function plannedSessions(content: ProgramContent): PlannedSession[] {
  const byKey = new Map(content.sessions.map((session) => [session.key, session]));
  const counted = new Map<LocalDate, number>();
  return content.days.flatMap((day) => {
    const place = (counted.get(day.date) ?? 0) + 1;
    counted.set(day.date, place);
    const session = byKey.get(day.session);
    return session ? [{ planned_id: `${day.date}.${place}`, day, session }] : [];
  });
}

/** How many sets a session counts: a circuit's rounds times prescriptions; a walk or cardio one; rest none. */
export function setCount(session: Session): number {
  if (session.kind === 'circuit') return session.rounds * session.prescriptions.length;
  return session.kind === 'rest' ? 0 : 1;
}
