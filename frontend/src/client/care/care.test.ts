import { describe, expect, it } from 'vitest';
import { adviceFor, asksFirst, painThresholds, PUBLISHED } from './advice';
import { isSymptom, SYMPTOMS, symptomsOf, URGENCIES } from './symptoms';

describe('advice after a pain report', () => {
  it('follows the published bands at their edges', () => {
    const said = [0, 2, 3, 5, 6, 10].map((rating) => adviceFor(rating, PUBLISHED));
    expect(said).toEqual(['fine', 'fine', 'watch', 'watch', 'stop', 'stop']);
  });
  it("follows the practitioner's own number for one person", () => {
    const own = painThresholds({ pain_stop: 4 });
    expect([3, 4].map((rating) => adviceFor(rating, own))).toEqual(['watch', 'stop']);
    expect(painThresholds(undefined)).toEqual(PUBLISHED);
  });
  it('asks first where a leg gives way or feels numb', () => {
    expect([['aching'], ['sharp', 'numb'], ['giving_way'], []].map(asksFirst)).toEqual([false, true, true, false]);
  });
});

describe('signs to stop for', () => {
  it('are each told once, the most urgent first', () => {
    const listed = URGENCIES.flatMap(symptomsOf);
    expect([...listed].sort()).toEqual(Object.keys(SYMPTOMS).sort());
    expect(listed[0]).toBe('chest_pain');
    for (const sign of ['chest_pain', 'fainting', 'breathless', 'one_sided_weakness', 'worst_headache', 'heat_confusion'] as const) {
      expect(SYMPTOMS[sign]).toBe('now');
    }
  });
  it('know a code from anything else', () => {
    expect([isSymptom('fever'), isSymptom('toString'), isSymptom('')]).toEqual([true, false, false]);
  });
});
