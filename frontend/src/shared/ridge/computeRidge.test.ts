import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays } from '../dates';
import { computeRidge, drawnLoad, heightAt, monthMarks, type RidgeInput, type RidgeWeek } from './computeRidge';

const START = '2026-03-23';
const week = (i: number, planned: number, done: number, heard: RidgeWeek['heard'] = 'all', due_share: number | null = null): RidgeWeek =>
  ({ starts_on: addDays(START, 7 * i), planned_load: planned, done_load: done, heard, due_share });
const SIZE = { width: 320, base: 204, top: 66 };
const ridge = (weeks: RidgeWeek[], over: Partial<RidgeInput> = {}) =>
  computeRidge({ weeks, today: addDays(START, 7 * weeks.length - 1), heardUntil: addDays(START, 7 * weeks.length - 1), ...SIZE, ...over });
const FOUR = [week(0, 200, 200), week(1, 300, 100), week(2, 400, 400), week(3, 300, 300)];

describe('the outline', () => {
  it('passes exactly through every week\'s planned load at the week\'s middle', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(2000), { minLength: 1, maxLength: 30 }), (loads) => {
        const { outline, middles } = ridge(loads.map((load, i) => week(i, load, 0)));
        const most = Math.max(1, ...loads);
        loads.forEach((load, i) => {
          const [x, y] = middles[i]!;
          expect(x).toBeCloseTo(((i + 0.5) * 320) / loads.length, 6);
          expect(y).toBeCloseTo(204 - (138 * load) / (1.04 * most), 6);
          expect(heightAt(outline, x)).toBeCloseTo(y, 6);
        });
      }),
    );
  });
  it('begins at 0.72 of the first week and comes down to the ground', () => {
    const { outline } = ridge(FOUR);
    expect(204 - outline[0]![1]).toBeCloseTo((138 * 0.72 * 200) / (1.04 * 400), 6);
    expect(outline.at(-1)).toEqual([320, 204]);
  });
  it('has two crags between two middles, off the straight line by at most 3 % of the scale, always the same', () => {
    const { outline, middles } = ridge(FOUR);
    expect(ridge(FOUR)).toEqual(ridge(FOUR));
    for (let i = 0; i < 3; i += 1) {
      const [from, to] = [middles[i]!, middles[i + 1]!];
      for (const [slot, [low, high]] of [[0.2, 0.42], [0.55, 0.77]].entries()) {
        const [x, y] = outline[i * 3 + 2 + slot]!;
        const along = (x - from[0]) / (to[0] - from[0]);
        expect(along).toBeGreaterThanOrEqual(low!);
        expect(along).toBeLessThanOrEqual(high!);
        expect(Math.abs(y - (from[1] + (to[1] - from[1]) * along))).toBeLessThanOrEqual(0.03 * 138 + 1e-9);
      }
    }
  });
});

describe('the fill', () => {
  it('shows a low heard week as a valley', () => {
    const { fills, middles } = ridge(FOUR);
    const done = fills[0]!;
    expect(fills).toHaveLength(1);
    expect(heightAt(done.slice(1), middles[1]![0])).toBeGreaterThan(heightAt(done.slice(1), middles[0]![0]));
  });
  it('is cut upright at the last moment heard; from there to today the ground is dotted', () => {
    const { fills, dotted } = ridge(FOUR, { heardUntil: addDays(START, 13), heardShare: 0.5, today: addDays(START, 20), dayShare: 0.25 });
    const cut = ((13.5 / 7) * 320) / 4;
    expect(fills[0]!.slice(-2).map(([x]) => x)).toEqual([cut, cut]);
    expect(fills[0]!.at(-1)![1]).toBe(204);
    expect(dotted).toHaveLength(1);
    expect([dotted[0]![0]![0], dotted[0]!.at(-1)![0]]).toEqual([cut, ((20.25 / 7) * 320) / 4]);
  });
  it('leaves out a span that no phone reported, and dots it', () => {
    const { fills, dotted } = ridge(FOUR, { unheard: [{ from: addDays(START, 7), to: addDays(START, 13) }] });
    expect(fills).toHaveLength(2);
    expect([dotted[0]![0]![0], dotted[0]!.at(-1)![0]]).toEqual([80, 160]);
  });
  it('is not drawn where nothing was ever heard', () => {
    const { fills, dotted } = ridge(FOUR, { heardUntil: null });
    expect(fills).toEqual([]);
    expect(dotted[0]![0]![0]).toBe(0);
  });
  it('draws the running week at done over due, so that a Wednesday is no cliff', () => {
    expect(drawnLoad(week(0, 400, 100, 'part', 0.25))).toBe(400);
    expect(drawnLoad(week(0, 400, 50, 'part', 0.25))).toBe(200);
    expect(drawnLoad(week(0, 400, 0, 'part', null))).toBe(400);
    expect(drawnLoad(week(0, 400, 0, 'all', null))).toBe(0);
  });
  it('may rise over the outline, and still fits the picture', () => {
    const { fills } = ridge([week(0, 100, 100), week(1, 100, 300)]);
    expect(Math.min(...fills[0]!.map(([, y]) => y))).toBeGreaterThanOrEqual(66 - 0.03 * 138);
  });
});

describe('marks', () => {
  it('the walker stands on the outline, and only within the season', () => {
    const { today, outline } = ridge(FOUR, { today: addDays(START, 10), dayShare: 0.5 });
    expect(today).toEqual([((10.5 / 7) * 320) / 4, heightAt(outline, ((10.5 / 7) * 320) / 4)]);
    expect(ridge(FOUR, { today: addDays(START, -1) }).today).toBeNull();
    expect(ridge(FOUR, { today: addDays(START, 28) }).today).toBeNull();
  });
  it('the hardest week is the first of the largest planned', () => expect(ridge(FOUR).hardest?.week).toBe(2));
  it('an empty season is an empty picture', () => {
    expect(ridge([], { today: START, heardUntil: null })).toMatchObject({ outline: [], fills: [], today: null, hardest: null });
    expect(monthMarks({ weeks: [], today: START, heardUntil: null, ...SIZE })).toEqual([]);
    expect(ridge([week(0, 0, 0)]).hardest).toBeNull();
  });
  it('months are marked on their first day, never crowded', () => {
    const marks = monthMarks({ weeks: Array.from({ length: 16 }, (_, i) => week(i, 1, 0)), today: START, heardUntil: null, ...SIZE });
    expect(marks.map((mark) => mark.date)).toEqual(['2026-04-01', '2026-05-01', '2026-06-01', '2026-07-01']);
  });
});
