import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apply, begin, redo, settle, STEPS_MAX, undo, type History } from './history';

const times = <T>(history: History<T>, n: number, step: (history: History<T>) => History<T>) => Array.from({ length: n }).reduce<History<T>>((now) => step(now), history);

describe('history', () => {
  it('leads back through every step and forward again', () => {
    fc.assert(fc.property(fc.uniqueArray(fc.integer(), { maxLength: 40 }), (values) => {
      const done = values.reduce((now, value) => apply(now, { value }), begin({ value: NaN }));
      const back = times(done, values.length, undo);
      expect(back.present).toEqual({ value: NaN });
      expect(times(back, values.length, redo).present).toBe(done.present);
    }));
  });

  it('stops at both ends', () => {
    const only = begin('a');
    expect(undo(only)).toBe(only);
    expect(redo(only)).toBe(only);
  });

  it('takes typing in one field as one step, until it is settled', () => {
    const typed = ['a1', 'a12', 'a123'].reduce((now, value) => apply(now, value, 'p1.note'), begin('a'));
    expect(undo(typed).present).toBe('a');
    expect(undo(apply(settle(typed), 'a1234', 'p1.note')).present).toBe('a123');
    expect(undo(apply(typed, 'b', 'p2.note')).present).toBe('a123');
    expect(undo(apply(typed, 'b')).present).toBe('a123');
  });

  it('forgets what was undone once something new is done', () => {
    const branched = apply(undo(apply(begin('a'), 'b')), 'c');
    expect(redo(branched)).toBe(branched);
    expect(undo(branched).present).toBe('a');
  });

  it('does not count what changes nothing', () => {
    const before = apply(begin('a'), 'b');
    expect(apply(before, 'b')).toBe(before);
  });

  it('keeps a bounded number of steps', () => {
    const many = Array.from({ length: STEPS_MAX + 20 }, (_, i) => i).reduce((now, i) => apply(now, i), begin(-1));
    expect(many.past).toHaveLength(STEPS_MAX);
    expect(undo(many).present).toBe(STEPS_MAX + 18);
  });
});
