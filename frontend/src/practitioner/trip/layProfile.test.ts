import { describe, expect, it } from 'vitest';
import { frameOf, layProfile } from './layProfile';

const frame = { width: 200, height: 100, lowM: 1000, highM: 1100, longestM: 400 };
const stretch = (start_m: number, height_m: number | null, rise_m: number | null) => ({ start_m, length_m: 100, height_m, rise_m });

describe('a profile', () => {
  it('joins stretches that meet and breaks where heights are missing', () => {
    const laid = layProfile([stretch(0, 1000, 50), stretch(100, 1050, 50), stretch(200, null, null), stretch(300, 1100, -100)], [], frame);
    expect(laid.lines).toEqual(['M0 100L50 50L100 0', 'M150 0L200 100']);
    expect(laid.areas[0]).toBe('M0 100L50 50L100 0L100 100L0 100Z');
    expect(laid.unknown).toEqual([[100, 150]]);
    expect(laid.end).toBe(200);
  });
  it('breaks where a segment begins at another height', () => {
    expect(layProfile([stretch(0, 1000, 50), stretch(100, 1090, 0)], [], frame).lines).toHaveLength(2);
  });
  it('marks the steepest descents on the line', () => {
    const descent = { from_km: 0.3, length_m: 100, descent_m: 100, grade_percent: -100 };
    expect(layProfile([stretch(300, 1100, -100)], [descent], frame).steep).toEqual([{ path: 'M150 0L200 100', x: 175, y: 50 }]);
  });
  it('shares one frame among the legs', () => {
    const file = (lowest_m: number | null, highest_m: number | null, end: number) => ({ points: 2, points_with_height: 2, segments: 1, lowest_m, highest_m, counted: [], remarks: [], stretches: [stretch(end - 100, null, null)] });
    expect(frameOf([file(900, 1000, 500), file(800, 950, 700), file(null, null, 100)], 10, 5)).toEqual({ width: 10, height: 5, lowM: 800, highM: 1000, longestM: 700 });
  });
});
