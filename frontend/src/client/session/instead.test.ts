import { describe, expect, it } from 'vitest';
import { linkOf } from '../care/link';
import { prescription, circuit, content, version } from '../testing/sample';
import { programDrawings } from './drawings';
import { doneToday, movementDone } from './library';
import { wholePlan } from './plan';

const squat = { exercise: 'squat', variant: 'free', sides: 'both' as const, reps_low: 6, reps_high: 8, hold_s: null, load_kg: null, reason: 'Without a step.' };
const one = prescription('p1', { alternatives: [squat], tempo_down_s: 3, note: 'Hold the rail' });

describe('another movement instead', () => {
  it('stands in its place with its own dose, under the same key and with the same rest', () => {
    const { as, variant } = doneToday(one, 'squat/free');
    expect(as).toEqual(prescription('p1', { exercise: 'squat', variant: 'free', sides: 'both', reps_low: 6, reps_high: 8, alternatives: [] }));
    expect(variant).toBe('free');
  });
  it('may be done in an easier or harder way', () => expect(doneToday(one, 'squat/chair')).toMatchObject({ as: { exercise: 'squat', variant: 'free' }, variant: 'chair' }));
  it('does not count when the program does not allow it', () => expect(doneToday(one, 'clam/free')).toEqual({ as: one, variant: 'step-15' }));
  it('is none when nothing, or another way of the prescribed movement, was taken', () => {
    expect(doneToday(one, undefined)).toEqual({ as: one, variant: 'step-15' });
    expect(doneToday(one, 'step-10')).toEqual({ as: one, variant: 'step-10' });
  });
  it('is of no trouble to a program from before there were any', () => expect(doneToday(prescription('p1'), 'squat/free').as.exercise).toBe('step-down'));
});

describe('what an entry says', () => {
  it('names the movement only where it is not the prescribed one', () => {
    expect(movementDone(one, 'squat/free')).toEqual({ exercise: 'squat', variant: 'free' });
    expect(movementDone(one, 'step-10')).toEqual({ variant: 'step-10' });
    expect(movementDone(one, 'clam/free')).toEqual({ variant: 'step-15' });
  });
  it('of pain during the other movement names that one and not the prescription', () => {
    const whole = { ...content, sessions: [{ ...circuit, prescriptions: [one] } as typeof circuit], days: content.days.slice(0, 1) };
    const [planned] = wholePlan([version(1, '2026-10-05', { content: whole })], new Map());
    expect(linkOf(planned!, 'p1', { p1: 'squat/free' })).toEqual({ planned_id: '2026-10-05.1', program_version: 1, exercise: 'squat', variant: 'free' });
    expect(linkOf(planned!, 'p1', {})).toMatchObject({ prescription: 'p1', exercise: 'step-down' });
  });
});

it('its drawings are kept like those of what is prescribed', () => {
  const rung = { variant: 'free', name: '', short: '', sides: 'both' as const, kit: [], how: [], dose: {}, load: 'none' as const };
  const entry = { code: 'squat', name: 'Squat', why: '', sides: 'both' as const, cues: [], faults: [], cautions: [], ladder: [rung] };
  const whole = { ...content, sessions: [{ ...circuit, prescriptions: [one] } as typeof circuit] };
  expect(programDrawings([{ content: whole, exercises: [entry] }]).join()).toContain('squat/figure.svg?variant=free');
});
