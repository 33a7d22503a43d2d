import { describe, expect, it } from 'vitest';
import { readFileSync } from 'node:fs';
import { adviseDose, asksFirst, painThresholds, PUBLISHED, zoneOf } from './advice';
import { isSymptom, SYMPTOMS, symptomsOf, URGENCIES } from './symptoms';

describe('advice after a pain report', () => {
  it('follows the published bands at their edges', () => {
    const said = [0, 2, 3, 5, 6, 10].map((rating) => zoneOf(rating, PUBLISHED));
    expect(said).toEqual(['safe', 'safe', 'acceptable', 'acceptable', 'high', 'high']);
  });
  it("follows the practitioner's own number for one person", () => {
    const own = painThresholds({ pain_stop: 4 });
    expect([3, 4].map((rating) => zoneOf(rating, own))).toEqual(['acceptable', 'high']);
    expect(painThresholds(undefined)).toEqual(PUBLISHED);
  });
  it('asks first where a leg gives way or feels numb', () => {
    expect([['aching'], ['sharp', 'numb'], ['giving_way'], []].map(asksFirst)).toEqual([false, true, true, false]);
  });
});

const vectors = (name: string) => JSON.parse(readFileSync(new URL(`../../../../tests/vectors/${name}`, import.meta.url), 'utf8')) as unknown;

describe('the vectors shared with the server', () => {
  it('begin from the same thresholds', () => {
    expect(PUBLISHED).toEqual((vectors('pain.json') as { thresholds: unknown }).thresholds);
  });
  it('are answered with the same zone and the same advice, all 10,000', () => {
    const { zones, advice, cases } = vectors('pain_cases.json') as { zones: string[]; advice: string[]; cases: number[][] };
    expect(cases.length).toBe(10_000);
    const others = cases.filter(([during = NaN, morning = NaN, usual_pain, pain_stop, acceptable_from, zone = NaN, said = NaN]) => {
      const own = painThresholds({ pain_stop: pain_stop!, acceptable_from: acceptable_from!, usual_pain: usual_pain! });
      return zoneOf(during, own) !== zones[zone] || adviseDose(during, morning, own) !== advice[said];
    });
    expect(others).toEqual([]);
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
