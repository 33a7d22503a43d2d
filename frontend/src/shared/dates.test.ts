import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { addDays, daysBetween, isLocalDate, isoWeek, isoWeekday, mondayOf, recordedAt, sundayOf, time, today } from './dates';

const DATE = fc.integer({ min: -20_000, max: 40_000 }).map((n) => addDays('2000-01-01', n));
const zone = process.env.TZ;
afterEach(() => {
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
  vi.restoreAllMocks();
});

describe('calendar days', () => {
  it('add and subtract over leap days, year ends and changes of the clock', () => {
    expect(addDays('2028-02-28', 1)).toBe('2028-02-29');
    expect(addDays('2026-12-31', 1)).toBe('2027-01-01');
    expect(addDays('2026-03-29', -1)).toBe('2026-03-28');
    fc.assert(fc.property(DATE, fc.integer({ min: -5000, max: 5000 }), (date, n) => daysBetween(date, addDays(date, n)) === n));
  });
  it('know what is no day', () => {
    expect(['2026-02-29', '2026-13-01', '2026-1-1', '', '2026-01-01T00:00'].map(isLocalDate)).toEqual([false, false, false, false, false]);
    expect(isLocalDate('2028-02-29')).toBe(true);
    expect(() => addDays('soon', 1)).toThrow(RangeError);
  });
  it.each([
    ['2026-01-01', 2026, 1], ['2027-01-01', 2026, 53], ['2027-01-03', 2026, 53], ['2027-01-04', 2027, 1], ['2024-12-30', 2025, 1], ['2020-12-31', 2020, 53],
  ])('%s is in ISO week %i-W%i', (date, year, week) => expect(isoWeek(date)).toEqual({ year, week }));
  it('a week is Monday to Sunday', () => {
    fc.assert(
      fc.property(DATE, (date) => {
        expect(isoWeekday(mondayOf(date))).toBe(1);
        expect(isoWeekday(sundayOf(date))).toBe(7);
        expect(mondayOf(date) <= date && date <= sundayOf(date)).toBe(true);
        expect(isoWeek(mondayOf(date))).toEqual(isoWeek(sundayOf(date)));
      }),
    );
  });
});

describe('instants', () => {
  it.each([
    ['Europe/Berlin', '2026-10-25T00:30:00Z', '2026-10-25T02:30:00.000+02:00'],
    ['Europe/Berlin', '2026-10-25T01:30:00Z', '2026-10-25T02:30:00.000+01:00'],
    ['America/St_Johns', '2026-01-01T02:00:00Z', '2025-12-31T22:30:00.000-03:30'],
    ['Pacific/Kiritimati', '2026-01-01T10:30:00Z', '2026-01-02T00:30:00.000+14:00'],
  ])('in %s %s is written %s', (tz, at, written) => {
    process.env.TZ = tz;
    expect(recordedAt(new Date(at))).toBe(written);
    expect(today(new Date(at))).toBe(written.slice(0, 10));
    expect(today(new Date(at), tz)).toBe(written.slice(0, 10));
    expect(Date.parse(written)).toBe(Date.parse(at));
  });
  it('are shown where the person is', () => expect(time('2026-05-26T16:09:00Z', 'Europe/Berlin')).toMatch(/0?6:09|18:09/));
});
