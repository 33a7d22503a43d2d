import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, daysBetween } from '../../shared/dates';
import type { PainReport, SessionItem } from '../api/types';
import { layStrip, LOAD_PX, PAIN_POINT_PX, type StripInput } from './layStrip';

const session = (date: string, over: Partial<SessionItem> = {}): SessionItem => ({
  planned_id: `${date}.1`, date, name: 'Steps', status: 'done', settled: true, kind: 'circuit', sets_done: 12, sets_prescribed: 12,
  program_version: 1, done_on: date, effort: 5, minutes: 30, planned_load: 200, done_load: 150, ...over,
});
const report = (day: string, rating: number, over: Partial<PainReport> = {}): PainReport => ({
  event_id: `${day}.${rating}.${over.when ?? 'during'}`, day, at: `${day}T10:00:00Z`, rating, region: 'knee', side: 'right', aspect: null, when: 'during', planned_id: null, ...over,
});
const input = (over: Partial<StripInput> = {}): StripInput => ({
  days: [], pain: [], flagged: new Set(), from: '2026-11-16', to: '2026-11-29', today: '2026-11-25', dayShare: 0.5,
  heard: { day: '2026-11-25', share: 0.25 }, width: 640, left: 80, ...over,
});

describe('x', () => {
  it('is by day, every day as wide as the next', () => {
    const { dayWidth, stones, todayX } = layStrip(input({ days: [session('2026-11-16'), session('2026-11-25')] }));
    expect(dayWidth).toBe(40);
    expect(stones.map(({ x }) => x)).toEqual([100, 460]);
    expect(todayX).toBe(460);
  });
  it('puts the Mondays at the beginning of their day', () => {
    expect(layStrip(input()).mondays).toEqual([{ date: '2026-11-16', x: 80 }, { date: '2026-11-23', x: 360 }]);
    expect(layStrip(input({ from: '2026-11-18', to: '2026-11-24' })).mondays.map(({ date }) => date)).toEqual(['2026-11-23']);
  });
});

describe('pain', () => {
  it('stands as high as its rating', () => {
    fc.assert(fc.property(fc.array(fc.record({ day: fc.integer({ min: 0, max: 13 }), rating: fc.integer({ min: 0, max: 10 }) }), { minLength: 1 }), (made) => {
      const pain = made.map(({ day, rating }, i) => report(addDays('2026-11-16', day), rating, { event_id: String(i) }));
      const rows = layStrip(input({ pain })).painRows;
      const stems = rows.flatMap((row) => row.stems.map((stem) => ({ ...stem, ground: row.ground })));
      expect(stems).toHaveLength(made.length);
      for (const { rating, y, ground } of stems) expect(ground - y).toBe(rating * PAIN_POINT_PX);
    }));
  });
  it('stays in the column of its day, whatever else was reported then', () => {
    const pain = [report('2026-11-20', 3), report('2026-11-20', 5, { when: 'after' }), report('2026-11-20', 2, { when: 'next_morning' })];
    const { painRows, dayWidth } = layStrip(input({ pain }));
    const begin = 80 + daysBetween('2026-11-16', '2026-11-20') * dayWidth;
    const xs = painRows[0]!.stems.map(({ x }) => x);
    expect(Math.min(...xs)).toBeGreaterThanOrEqual(begin);
    expect(Math.max(...xs)).toBeLessThanOrEqual(begin + dayWidth);
    expect(new Set(xs).size).toBe(3);
  });
  it('has hollow heads for the next morning and is flagged only where a flag is open', () => {
    const pain = [report('2026-11-20', 5), report('2026-11-21', 4, { when: 'next_morning' })];
    const [during, morning] = layStrip(input({ pain, flagged: new Set([pain[1]!.event_id]) })).painRows[0]!.stems;
    expect(during).toMatchObject({ hollow: false, flagged: false });
    expect(morning).toMatchObject({ hollow: true, flagged: true });
  });
  it('has a row for each place and side, the flagged one first, and rows never meet', () => {
    const pain = [report('2026-11-20', 9, { side: 'left' }), report('2026-11-20', 2), report('2026-11-20', 10, { region: 'hip' })];
    const { painRows } = layStrip(input({ pain, flagged: new Set([pain[1]!.event_id]) }));
    expect(painRows.map(({ region, side }) => `${region} ${side}`)).toEqual(['knee right', 'hip right', 'knee left']);
    for (const [i, row] of painRows.entries()) {
      const before = painRows[i - 1]?.ground ?? 0;
      expect(Math.min(...row.stems.map(({ y }) => y))).toBeGreaterThan(before);
    }
  });
  it('outside the days shown is not drawn', () => {
    expect(layStrip(input({ pain: [report('2026-11-15', 5), report('2026-11-30', 5)] })).painRows).toEqual([]);
  });
});

describe('load', () => {
  it('is on one scale for planned and done', () => {
    const laid = layStrip(input({ days: [session('2026-11-16', { planned_load: 200, done_load: 300 }), session('2026-11-18', { planned_load: 100, done_load: null })] }));
    expect(laid.done.map(({ height }) => height)).toEqual([LOAD_PX]);
    expect(laid.planned.map(({ height }) => height)).toEqual([LOAD_PX * (2 / 3), LOAD_PX / 3]);
    for (const bar of [...laid.planned, ...laid.done]) expect(bar.y + bar.height).toBeCloseTo(laid.ground, 5);
  });
  it('of two sessions on one day shares its column', () => {
    const { planned, dayWidth } = layStrip(input({ days: [session('2026-11-16'), session('2026-11-16', { planned_id: '2026-11-16.2' })] }));
    expect(planned[0]!.x + planned[0]!.width).toBeLessThanOrEqual(planned[1]!.x + 0.1);
    expect(planned[1]!.x + planned[1]!.width).toBeLessThanOrEqual(80 + dayWidth);
  });
});

describe('silence', () => {
  it('is dotted from the moment last heard until now', () => {
    expect(layStrip(input()).unheard).toEqual({ x: 450, width: 10 });
  });
  it('begins at the edge when the phone fell silent before, or was never heard', () => {
    expect(layStrip(input({ heard: null })).unheard).toEqual({ x: 80, width: 380 });
    expect(layStrip(input({ heard: { day: '2026-11-01', share: 0.9 } })).unheard?.x).toBe(80);
  });
  it('is not drawn when the phone was heard just now', () => {
    expect(layStrip(input({ heard: { day: '2026-11-25', share: 0.5 } })).unheard).toBeNull();
  });
});
