import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, mondayOf } from '../../shared/dates';
import { plannedSessions } from '../../shared/program';
import { addDay, endOf, idAt, moveDay, placeOf, removeDay, repeatWeek, setDay, weeksAfter, weeksOf } from './editDays';
import { circuit, MONDAY, program, programs } from './testing/arbitrary';

const sorted = (dates: string[]) => [...dates].sort();
const dates = (content: { days: readonly { date: string }[] }) => content.days.map((day) => day.date);

describe('planned days', () => {
  it('are found by the name that the server gives them', () => {
    fc.assert(fc.property(programs, (content) => {
      plannedSessions(content).forEach((one, place) => {
        expect(placeOf(content, one.planned_id)).toBe(place);
        expect(idAt(content, place)).toBe(one.planned_id);
      });
      expect(placeOf(content, '1999-01-01.1')).toBe(-1);
    }));
  });

  it('stay sorted through adding, moving and taking out, and none is lost', () => {
    fc.assert(fc.property(programs, fc.integer({ min: -7, max: 60 }), fc.nat(19), (content, after, which) => {
      const date = addDays(MONDAY, after);
      const added = addDay(content, { date, session: 's1', fixed_day: false });
      expect(dates(added)).toEqual(sorted([...dates(content), date]));
      const id = idAt(content, which % Math.max(1, content.days.length));
      if (id === null) return;
      const moved = moveDay(content, id, date);
      expect(dates(moved)).toEqual(sorted(dates(moved)));
      expect(moved.days).toHaveLength(content.days.length);
      expect(removeDay(content, id).days).toHaveLength(content.days.length - 1);
    }));
  });

  it('moved to their own date stay in their place', () => {
    const content = program([circuit('s1', [])], [{ date: MONDAY, session: 's1', fixed_day: true }]);
    expect(moveDay(content, `${MONDAY}.1`, MONDAY)).toBe(content);
  });

  it('moved onto a date stand there as the last and keep their window', () => {
    const content = program([circuit('s1', []), circuit('s2', [])], [
      { date: MONDAY, session: 's1', fixed_day: true }, { date: addDays(MONDAY, 1), session: 's2', fixed_day: false },
    ]);
    expect(moveDay(content, `${MONDAY}.1`, addDays(MONDAY, 1)).days).toEqual([
      { date: addDays(MONDAY, 1), session: 's2', fixed_day: false }, { date: addDays(MONDAY, 1), session: 's1', fixed_day: true },
    ]);
    expect(setDay(content, `${MONDAY}.1`, { fixed_day: false }).days[0]).toEqual({ date: MONDAY, session: 's1', fixed_day: false });
  });
});

describe('weeks', () => {
  it('run from the start to the end without a gap, and hold every planned day once', () => {
    fc.assert(fc.property(programs, (content) => {
      const weeks = weeksOf(content);
      expect(weeks.map((week) => week.number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
      expect(weeks.flatMap((week) => week.planned.map((one) => one.planned_id))).toEqual(plannedSessions(content).map((one) => one.planned_id));
    }));
  });

  it('show a day that lies outside of the program', () => {
    const content = program([circuit('s1', [])], [{ date: addDays(MONDAY, -3), session: 's1', fixed_day: false }]);
    expect(weeksOf(content)[0]).toMatchObject({ monday: addDays(MONDAY, -7), number: 0 });
  });

  it('end the day before the trip where no end is given', () => {
    const content = { ...program([], []), ends_on: null, goal: { name: 'Harrowcomb', date: '2026-10-21' } };
    expect(endOf(content)).toBe('2026-10-20');
    expect(weeksOf(content)).toHaveLength(3);
    expect(weeksAfter(content, MONDAY)).toBe(2);
  });
});

describe('a week used for the following ones', () => {
  it('stands in each of them, leaves the others alone, and never goes past the end', () => {
    fc.assert(fc.property(programs, fc.integer({ min: 0, max: 7 }), fc.integer({ min: 1, max: 9 }), (content, at, weeks) => {
      const monday = addDays(MONDAY, 7 * at);
      const after = repeatWeek(content, monday, weeks);
      const of = (all: typeof content, week: string) => all.days.filter((day) => mondayOf(day.date) === week).map((day) => ({ ...day, date: new Date(day.date).getUTCDay() }));
      for (let i = 0; i < 8; i++) {
        const week = addDays(MONDAY, 7 * i);
        expect(of(after, week)).toEqual(i > at && i <= at + weeks ? of(content, monday) : of(content, week));
      }
      expect(dates(after).every((date) => date <= endOf(content)!)).toBe(true);
      expect(dates(after)).toEqual(sorted(dates(after)));
    }));
  });
});
