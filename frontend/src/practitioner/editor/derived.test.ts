import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, isoWeekday } from '../../shared/dates';
import { toLibrary } from '../exercises/entry';
import { firstFrom, shown, unplanned } from './choice';
import { linesOf, pairs } from './compareLines';
import { chooseVariant, setPrescription } from './edit';
import { removeDay } from './editDays';
import { LIMITS, within } from './limits';
import { wasWords } from './phrases';
import { circuit, MONDAY, prescription, program, programs, STEP_DOWN } from './testing/arbitrary';
import { toTemplate } from './toTemplate';
import { WEEKDAYS } from './types';

const library = toLibrary([STEP_DOWN]);
const plan = () => program([circuit('s1', [prescription('p1')]), circuit('s2', [])], [
  { date: MONDAY, session: 's1', fixed_day: false }, { date: addDays(MONDAY, 7), session: 's1', fixed_day: false },
]);

describe('what is in view', () => {
  it('is the first day from today on, and the last one after the end', () => {
    expect(firstFrom(plan(), addDays(MONDAY, 1))?.planned_id).toBe(`${addDays(MONDAY, 7)}.1`);
    expect(firstFrom(plan(), '2027-05-01')?.planned_id).toBe(`${addDays(MONDAY, 7)}.1`);
  });

  it('gives way to the next day when its own is gone', () => {
    const after = removeDay(plan(), `${MONDAY}.1`);
    expect(shown(after, { day: `${MONDAY}.1`, session: null }).planned?.planned_id).toBe(`${addDays(MONDAY, 7)}.1`);
  });

  it('may be a session that no day asks for', () => {
    expect(unplanned(plan()).map((one) => one.key)).toEqual(['s2']);
    expect(shown(plan(), { day: null, session: 's2' })).toMatchObject({ planned: null, session: { key: 's2' } });
    expect(shown(program([], []), { day: null, session: null })).toEqual({ planned: null, session: null });
  });
});

describe('two versions beside each other', () => {
  it('differ in nothing when they say the same', () => {
    fc.assert(fc.property(programs, (content) => {
      expect(pairs(linesOf(content, library), linesOf(structuredClone(content), library)).filter((row) => row.differs)).toEqual([]);
    }));
  });

  it('mark just the line that differs', () => {
    const eased = chooseVariant(plan(), 's1', 'p1', STEP_DOWN, 'rail');
    const changed = pairs(linesOf(plan(), library), linesOf(eased, library)).filter((row) => row.differs);
    expect(changed.map((row) => row.id)).toEqual(['p1']);
    expect(changed[0]?.mine).toContain('15 cm step');
    expect(changed[0]?.theirs).toContain('hand on the rail');
  });

  it('leave out no line of either', () => {
    fc.assert(fc.property(programs, programs, (mine, theirs) => {
      const [ours, others] = [linesOf(mine, library), linesOf(theirs, library)];
      const rows = pairs(ours, others);
      expect(rows.filter((row) => row.mine !== null).map((row) => row.id)).toEqual(ours.map((line) => line.id));
      expect(rows.filter((row) => row.theirs !== null).map((row) => row.id).sort()).toEqual(others.map((line) => line.id).sort());
    }));
  });
});

describe('what was before', () => {
  it('names only what differs', () => {
    const was = prescription('p1');
    const now = setPrescription(plan(), 's1', 'p1', { rest_s: 60 }).sessions[0] as ReturnType<typeof circuit>;
    expect(wasWords(was, now.prescriptions[0]!, library)).toBe('rest 45 s');
    expect(wasWords(was, { ...was }, library)).toBeNull();
  });
});

describe('a template', () => {
  it('counts its weeks from the first day, and folds like weeks at the end into one', () => {
    const template = toTemplate(plan(), 'Legs', 'For knees');
    expect(template).toMatchObject({ name: 'Legs', about: 'For knees', weeks: [[{ weekday: 'mon', session: 's1', fixed_day: false }]] });
    expect(template.sessions.map((one) => one.key)).toEqual(['s1']);
  });

  it('holds every planned day once it is laid out again over the same span', () => {
    fc.assert(fc.property(programs, fc.integer({ min: 0, max: 6 }), (content, late) => {
      const starts_on = addDays(MONDAY, late);
      const days = content.days.filter((day) => day.date >= starts_on);
      if (days.length === 0) return;
      const { weeks } = toTemplate({ ...content, starts_on, days }, 'T', '');
      const span = weeks.length * 7;
      const laid = Array.from({ length: span }, (_, i) => addDays(starts_on, i)).flatMap((date, i) =>
        (weeks[Math.floor(i / 7)] ?? []).filter((day) => WEEKDAYS[isoWeekday(date) - 1] === day.weekday).map((day) => ({ date, session: day.session, fixed_day: day.fixed_day })));
      expect(laid).toEqual(days.filter((day) => day.date < addDays(starts_on, span)));
    }));
  });
});

it('a number fits its range, and a whole one where it must be', () => {
  expect(within(8, LIMITS.reps)).toBe(8);
  for (const value of [0, 51, 8.5, null]) expect(within(value, LIMITS.reps)).toBeNull();
  expect(within(0.5, LIMITS.load_kg)).toBe(0.5);
});
