import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addPrescription, changeKind, chooseVariant, copySession, freshKey, keysOf, movePrescription, prescribe, removePrescription, removeSession, setPrescription, setSession } from './edit';
import { circuit, prescription, program, programs, STEP_DOWN } from './testing/arbitrary';

const two = () => program([circuit('s1', [prescription('p1'), prescription('p2'), prescription('p3')]), circuit('s2', [prescription('p4')])], [
  { date: '2026-10-05', session: 's1', fixed_day: false }, { date: '2026-10-12', session: 's1', fixed_day: true }, { date: '2026-10-13', session: 's2', fixed_day: false },
]);
const order = (content: ReturnType<typeof two>, at = 0) => {
  const session = content.sessions[at];
  return session?.kind === 'circuit' ? session.prescriptions.map((one) => one.key) : [];
};

describe('keys', () => {
  it('are the next free number, above those of the published version too', () => {
    expect(freshKey('s', ['s1', 's3', 'p9'])).toBe('s4');
    expect(freshKey('p', [])).toBe('p1');
    expect(freshKey('p', ['p2', 'warm-up', 'p10'])).toBe('p11');
  });

  it('are never shared after a copy, and none of the old ones changes', () => {
    fc.assert(fc.property(programs, fc.nat(3), (content, which) => {
      const source = content.sessions[which % content.sessions.length]!;
      const key = freshKey('s', keysOf(content));
      const copied = copySession(content, source.key, { key, name: 'Copy' }, ['p40'], () => false);
      const keys = keysOf(copied);
      expect(new Set(keys).size).toBe(keys.length);
      expect(keys.filter((one) => keysOf(content).includes(one))).toEqual(keysOf(content));
      expect(keys.filter((one) => !keysOf(content).includes(one))).not.toContain('p40');
    }));
  });

  it('stay through every edit of one exercise', () => {
    fc.assert(fc.property(programs, fc.constantFrom('rail', 'step-15', 'hold'), fc.integer({ min: 1, max: 50 }), (content, variant, reps) => {
      const [session] = content.sessions;
      const [first] = keysOf({ ...content, sessions: [session!] }).slice(1);
      const edited = setPrescription(chooseVariant(content, session!.key, first ?? '', STEP_DOWN, variant), session!.key, first ?? '', { reps_low: reps });
      expect(keysOf(edited)).toEqual(keysOf(content));
    }));
  });
});

describe('order', () => {
  it('moves one place and back again', () => {
    const moved = movePrescription(two(), 's1', 'p1', 1);
    expect(order(moved)).toEqual(['p2', 'p1', 'p3']);
    expect(order(movePrescription(moved, 's1', 'p1', -1))).toEqual(['p1', 'p2', 'p3']);
  });

  it('does not move beyond an end', () => {
    expect(order(movePrescription(two(), 's1', 'p1', -1))).toEqual(['p1', 'p2', 'p3']);
    expect(order(movePrescription(two(), 's1', 'p3', 1))).toEqual(['p1', 'p2', 'p3']);
  });

  it('loses and doubles nothing, however often things are moved', () => {
    fc.assert(fc.property(fc.array(fc.tuple(fc.constantFrom('p1', 'p2', 'p3'), fc.constantFrom(-1 as const, 1 as const))), (moves) => {
      const moved = moves.reduce((now, [key, by]) => movePrescription(now, 's1', key, by), two());
      expect(order(moved).sort()).toEqual(['p1', 'p2', 'p3']);
    }));
  });
});

describe('an edit', () => {
  it('leaves what it does not touch the same object, and the old content as it was', () => {
    const before = two();
    const frozen = JSON.stringify(before);
    const after = setPrescription(before, 's1', 'p2', { rest_s: 60 });
    expect(after.sessions[1]).toBe(before.sessions[1]);
    expect(JSON.stringify(before)).toBe(frozen);
  });

  it('of another session of the same program does not reach it', () => {
    expect(setPrescription(two(), 's2', 'p1', { rest_s: 60 })).toEqual(two());
  });

  it('adds at the end and takes out one', () => {
    const added = addPrescription(two(), 's2', prescribe(STEP_DOWN, 'hold', 'p5', 30));
    expect(order(added, 1)).toEqual(['p4', 'p5']);
    expect(order(removePrescription(added, 's2', 'p4'), 1)).toEqual(['p5']);
  });

  it('sets fields of a session', () => {
    expect(setSession(two(), 's1', { rounds: 4 }).sessions[0]).toMatchObject({ key: 's1', rounds: 4, name: 'Session s1' });
  });
});

describe('a rung', () => {
  it('keeps the dose on the way to another of the same kind', () => {
    const [one] = (chooseVariant(two(), 's1', 'p1', STEP_DOWN, 'rail').sessions[0] as ReturnType<typeof circuit>).prescriptions;
    expect(one).toMatchObject({ variant: 'rail', reps_low: 8, reps_high: 10, hold_s: null, load_kg: null });
  });

  it('takes the usual hold where repetitions turn into one', () => {
    const [one] = (chooseVariant(two(), 's1', 'p1', STEP_DOWN, 'hold').sessions[0] as ReturnType<typeof circuit>).prescriptions;
    expect(one).toMatchObject({ variant: 'hold', reps_low: null, reps_high: null, hold_s: 20, load_kg: 4 });
  });

  it('that is not on the ladder changes nothing', () => {
    const before = two();
    expect(chooseVariant(before, 's1', 'p1', STEP_DOWN, 'moon')).toBe(before);
  });
});

describe('a session', () => {
  it('goes with its days', () => {
    const after = removeSession(two(), 's1');
    expect(after.sessions.map((one) => one.key)).toEqual(['s2']);
    expect(after.days.map((day) => day.session)).toEqual(['s2']);
  });

  it('copied from a day on takes the later days with it', () => {
    const after = copySession(two(), 's1', { key: 's3', name: 'Harder' }, [], (place) => place >= 1);
    expect(after.sessions.map((one) => one.key)).toEqual(['s1', 's3', 's2']);
    expect(after.days.map((day) => day.session)).toEqual(['s1', 's3', 's2']);
    expect(order(after, 1)).toEqual(['p5', 'p6', 'p7']);
  });

  it('of another kind keeps key, name, effort and minutes', () => {
    const walk = changeKind(setSession(two(), 's1', { expected_effort: 7, expected_minutes: 50 }), 's1', 'walk').sessions[0];
    expect(walk).toMatchObject({ kind: 'walk', key: 's1', name: 'Session s1', expected_effort: 7, expected_minutes: 50 });
    expect(walk).not.toHaveProperty('prescriptions');
    expect(changeKind(two(), 's1', 'rest').sessions[0]).toEqual({ kind: 'rest', key: 's1', name: 'Session s1', note: '' });
  });
});
