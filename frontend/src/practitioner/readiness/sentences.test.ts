import { afterEach, expect, it, vi } from 'vitest';
import { setUnitSystem } from '../../shared/units';
import { setLanguage } from '../../shared/words/mechanism';
import type { ReadinessItem, ReadinessShown } from '../api/types';
import { changeWords, closingWords, countWords, dayWords, doubtWords, evidenceWords, itemWords } from './sentences';

vi.stubGlobal('navigator', { languages: ['en-GB', 'de-AT'] });
vi.stubGlobal('document', { documentElement: { lang: 'en' } });

const ITEM: ReadinessItem = {
  subject: 'ascent', mark: 'not_shown', unit: 'm', asked: 900, shown: 450, low: 382.5, high: 517.5, at_most: false, parts: [],
  evidence: [{ kind: 'walk', id: 'w', day: '2026-05-30', value: 450, side: null }], doubts: ['measure', 'silent'], closing: 'grow', weeks: 6, in_time: false,
  kind: 'house', source: 'house', note: 'At least what the hardest day asks',
};
const of = (more: Partial<ReadinessItem>): ReadinessItem => ({ ...ITEM, ...more });
const SHOWN: ReadinessShown = { as_of: '2026-06-10', trip: null, weeks_left: null, weeks_to_build: null, heard_on: null, cautions: [], items: [ITEM] };
const SUBJECTS: readonly ReadinessItem['subject'][] = [
  'longest_day', 'ascent', 'descent', 'pack', 'whole_day', 'days_in_a_row', 'effort', 'pain_at_rest', 'chair-stand-30s', 'heel-rise', 'step-down', 'single-leg-stance-open', 'side-bridge',
];

afterEach(async () => {
  setUnitSystem('metric');
  await setLanguage('en');
});

it('says what is asked and shown in one sentence, in metric and in US units', () => {
  expect(itemWords(ITEM)).toBe('The day with most ascent asks 900 m; the most in a day was 450 m.');
  setUnitSystem('us');
  expect(itemWords(ITEM)).toBe('The day with most ascent asks 2,950 ft; the most in a day was 1,500 ft.');
});

it('says of how much it may truly be, and leaves the silent phone to the line above all items', () => {
  expect(doubtWords(ITEM)).toEqual(['With the error of measuring, 380 m to 520 m.', 'Within that, the mark could be another.']);
  expect(doubtWords(of({ subject: 'effort', unit: 'of_ten', low: 4, high: 4, doubts: ['once'] }))).toEqual(['Shown on one day only.']);
  expect(doubtWords(of({ subject: 'heel-rise', low: null, high: null, doubts: ['old'] }))).toEqual(['More than twelve weeks ago.']);
});

it('tells an ability of a person by whole numbers, and calls no pain safe', () => {
  expect(doubtWords(of({ subject: 'heel-rise', unit: 'repetitions', low: 14.1, high: 23.9, doubts: [] }))).toEqual(['With the error of measuring, 14 times to 24 times.']);
  expect(itemWords(of({ subject: 'pain_at_rest', unit: 'of_ten', asked: 2, shown: 2 }))).not.toContain('safe');
});

it('says what would close the gap and whether there is time for it', () => {
  expect(closingWords(ITEM)).toEqual(['Walks that grow by the season’s steps: about 6 weeks.', 'Not in time before the taper: shorter days, a lighter pack or a later date.']);
  expect(closingWords(of({ weeks: 1, in_time: true }))).toEqual(['Walks that grow by the season’s steps: about 1 week.', 'In time before the taper.']);
  expect(closingWords(of({ closing: 'nothing', weeks: 0, in_time: true }))).toEqual(['Nothing; it is shown.']);
  expect(closingWords(of({ closing: 'take_test', weeks: null, in_time: null }))).toEqual(['Take the test.']);
});

it('tells tests by their weaker side, by one result, by grades, and without a norm', () => {
  const test = of({ subject: 'heel-rise', unit: 'repetitions', asked: 24, shown: 19, evidence: [{ kind: 'test', id: 't', day: '2026-05-30', value: 19, side: 'left' }] });
  expect(itemWords(test)).toBe('The norm asks 24 times; 19 times on the weaker side.');
  expect(itemWords({ ...test, evidence: [] })).toBe('The norm asks 24 times; the result was 19 times.');
  expect(itemWords({ ...test, at_most: true, unit: 'points', asked: 1, shown: 2 })).toBe('The best grade goes to 1 point; 2 points on the weaker side.');
  expect(itemWords({ ...test, asked: null })).toBe('The result was 19 times; there is no norm for this person.');
  expect(evidenceWords(test.evidence[0]!, test)).toBe('test of Sat 30 May, left 19 times');
});

it('says of what is not known what it would take to know it, for every item and in both languages', async () => {
  for (const language of ['en', 'de'] as const) {
    await setLanguage(language);
    for (const subject of SUBJECTS) {
      for (const shown of [null, 3]) expect(itemWords(of({ subject, unit: 'of_ten', shown, evidence: [] }))).not.toMatch(/[{}]|undefined/);
    }
  }
  expect(itemWords(of({ shown: null, asked: null, closing: 'say_trip' }))).toBe('Die Tour sagt nicht, wie viel sie verlangt.');
});

it('counts the marks without adding them up', () => {
  expect(countWords([ITEM, of({ mark: 'shown' }), of({ mark: 'unknown' })])).toBe('1 shown, 0 near, 1 not shown, 1 unknown.');
});

it('tells a day of the trip with what is not known of it', () => {
  expect(dayWords({ name: '', distance_km: 13, ascent_m: 850, descent_m: 250, pack_kg: 9 })).toBe('13 km, 850 m up, 250 m down, 9 kg on the back');
  expect(dayWords({ name: '', distance_km: 13, ascent_m: null, descent_m: null, pack_kg: null })).toBe('13 km, heights not known');
  expect(dayWords({ name: '', distance_km: 0, ascent_m: null, descent_m: null, pack_kg: null })).toBe('rest');
});

it('tells what stands differently since a note was signed', () => {
  const now: ReadinessShown = { ...SHOWN, items: [of({ mark: 'near' }), of({ subject: 'pack', mark: 'shown' })] };
  expect(changeWords(SHOWN, now)).toEqual(['Ascent in a day: not shown, now near.', 'Pack: not there then, now shown.']);
  expect(changeWords(SHOWN, SHOWN)).toEqual([]);
});
