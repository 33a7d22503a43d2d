/** Programs of every shape, for the tests of edits. */
import fc from 'fast-check';
import { addDays } from '../../../shared/dates';
import type { Circuit, Day, Prescription, ProgramContent, Session } from '../../../shared/program';
import type { Entry } from '../../exercises/entry';

export const MONDAY = '2026-10-05';

export const STEP_DOWN: Entry = {
  code: 'step-down', name: 'Step-down', trains: ['descent_control'], loads: ['knee'], why: 'It brakes.', sides: 'each',
  cues: [], faults: [], cautions: [],
  ladder: [
    { variant: 'rail', name: 'hand on the rail', short: '', kit: ['step', 'rail'], how: [], sides: 'both', dose: { reps: [8, 10] }, load: 'none', drawn: false },
    { variant: 'step-15', name: '15 cm step', short: '', kit: ['step'], how: [], sides: 'both', dose: { reps: [8, 12] }, load: 'optional', drawn: false },
    { variant: 'hold', name: 'held low', short: '', kit: [], how: [], sides: 'both', dose: { hold_s: [20, 40] }, load: 'optional', drawn: false },
  ],
};

export const prescription = (key: string): Prescription => ({
  key, exercise: 'step-down', variant: 'step-15', sides: 'each', reps_low: 8, reps_high: 10, hold_s: null, load_kg: 4, tempo_down_s: null, rest_s: 45, note: '',
});
export const circuit = (key: string, prescriptions: Prescription[]): Circuit => ({
  kind: 'circuit', key, name: `Session ${key}`, note: '', expected_effort: 5, expected_minutes: null, rounds: 3, prescriptions,
});
export const program = (sessions: Session[], days: Day[]): ProgramContent => ({
  title: 'Legs', goal: null, starts_on: MONDAY, ends_on: addDays(MONDAY, 8 * 7 - 1), sessions, days,
});

/** Up to four circuits of up to five exercises, on up to twenty days of the eight weeks, sorted as the server has them. */
export const programs: fc.Arbitrary<ProgramContent> = fc
  .record({ sizes: fc.array(fc.nat(5), { minLength: 1, maxLength: 4 }), days: fc.array(fc.tuple(fc.nat(55), fc.nat(3), fc.boolean()), { maxLength: 20 }) })
  .map(({ sizes, days }) => {
    let next = 0;
    const sessions = sizes.map((size, i) => circuit(`s${i + 1}`, Array.from({ length: size }, () => prescription(`p${++next}`))));
    const planned = days.map(([after, which, fixed_day]) => ({ date: addDays(MONDAY, after), session: `s${(which % sizes.length) + 1}`, fixed_day }));
    return program(sessions, planned.sort((a, b) => a.date.localeCompare(b.date)));
  });
