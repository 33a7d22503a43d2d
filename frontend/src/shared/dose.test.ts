import { describe, expect, it } from 'vitest';
import { doseWords, spokenDose, stoneLabel } from './dose';

const dose = (over: object) => ({ sides: 'each' as const, reps_low: 8, reps_high: 10, hold_s: null, load_kg: null, tempo_down_s: null, ...over });
const held = { reps_low: null, reps_high: null, hold_s: 30 };

describe('a dose', () => {
  it('in words', () => {
    expect(doseWords(dose({}))).toBe('8 to 10 each side');
    expect(doseWords(dose({ reps_high: 8 }))).toBe('8 times each side');
    expect(doseWords(dose(held))).toBe('hold 30 s each side');
    expect(doseWords(dose({ sides: 'both', load_kg: 6, tempo_down_s: 3 }))).toBe('8 to 10 both sides together, with 6 kg, 3 s on the way down');
  });
  it('on a stone', () => {
    expect(stoneLabel(dose({}))).toEqual({ top: '8', under: 'each' });
    expect(stoneLabel(dose(held))).toEqual({ top: '30', under: 'sec' });
    expect(stoneLabel(dose({ sides: 'both', reps_low: 15, reps_high: 20 }))).toEqual({ top: '15', under: 'both' });
  });
  it('for the ear begins with what is on the stone', () => {
    expect(spokenDose(dose({}))).toBe('8 each side, up to 10');
    expect(spokenDose(dose({ reps_high: 8 }))).toBe('8 each side');
    expect(spokenDose(dose(held))).toBe('30 sec each side');
  });
});
