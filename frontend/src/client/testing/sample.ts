/** A small program and entries for tests: Thornwater's Jonna before the Harrowcomb traverse. */
import type { Event, EventKind } from '../../outbox';
import type { Prescription, ProgramContent, Session } from '../../shared/program';
import type { Version } from '../session/plan';

export const prescription = (key: string, more: Partial<Prescription> = {}): Prescription => ({
  key, exercise: 'step-down', variant: 'step-15', sides: 'each', reps_low: 8, reps_high: 10, hold_s: null,
  load_kg: null, tempo_down_s: null, rest_s: 45, note: '', ...more,
});

export const circuit: Session = {
  key: 's1', kind: 'circuit', name: 'Steps and hips', rounds: 2, expected_effort: 5, expected_minutes: 30, note: '',
  prescriptions: [prescription('p1'), prescription('p2', { exercise: 'side-bridge', variant: 'knees', reps_low: null, reps_high: null, hold_s: 30 })],
};
export const walk: Session = {
  key: 's2', kind: 'walk', name: 'Walk', distance_km: 8, ascent_m: 300, descent_m: 300, pack_kg: 6, expected_effort: 4, expected_minutes: null, note: '',
};
export const rest: Session = { key: 's3', kind: 'rest', name: 'Rest', note: '' };

/** Monday 5 October 2026 is the first day. */
export const content: ProgramContent = {
  title: 'Legs for Harrowcomb', goal: { name: 'Harrowcomb traverse', date: '2026-10-18' }, starts_on: '2026-10-05', ends_on: null,
  sessions: [circuit, walk, rest],
  days: [
    { date: '2026-10-05', session: 's1', fixed_day: false },
    { date: '2026-10-06', session: 's1', fixed_day: true },
    { date: '2026-10-07', session: 's1', fixed_day: false },
    { date: '2026-10-07', session: 's2', fixed_day: false },
    { date: '2026-10-08', session: 's3', fixed_day: false },
    { date: '2026-10-12', session: 's1', fixed_day: false },
  ],
};
export const version = (number = 1, effective_on = '2026-10-05', more: Partial<Version> = {}): Version => ({
  number, effective_on, published_at: `${effective_on}T08:00:00Z`, changes: [], content, exercises: [], ...more,
});

let made = 0;
/** An entry at a local time, `2026-10-05T18:00`. */
export function entry(kind: EventKind, at: string, body: Record<string, unknown>): Event {
  made += 1;
  return { seq: made, id: `0192f0c0-0000-7000-8000-${String(made).padStart(12, '0')}`, kind, recorded_at: `${at}:00.000+02:00`, body };
}
