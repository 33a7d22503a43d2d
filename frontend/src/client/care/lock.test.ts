import { describe, expect, it } from 'vitest';
import type { FlagAnswer } from '../../outbox';
import { entry } from '../testing/sample';
import { clearedOf, locksOf, symptomOf } from './lock';

const chest = entry('symptom_reported', '2026-10-05T18:00', { symptom: 'chest_pain' });
const fever = entry('symptom_reported', '2026-10-05T17:00', { symptom: 'fever' });
const slip = entry('entry_withdrawn', '2026-10-05T18:01', { event_id: chest.id });
const answer = (action: string, event_ids: string[]): FlagAnswer => ({ flag_id: 'f1', action, event_ids, decided_at: '2026-10-06T08:00:00Z' });

describe('the stop after a sign', () => {
  it('lasts until that very report is cleared', () => {
    expect(locksOf([fever, chest], [])).toEqual([chest, fever]);
    expect(locksOf([fever, chest], [answer('clear', [chest.id])])).toEqual([fever]);
    expect(locksOf([fever, chest], [answer('clear', [chest.id, fever.id])])).toEqual([]);
  });
  it('is not lifted by any other answer', () => {
    for (const action of ['contact', 'hold', 'close', 'ease_off']) expect(locksOf([chest], [answer(action, [chest.id])])).toEqual([chest]);
    expect(locksOf([chest], [{ flag_id: 'f1', action: 'clear', decided_at: '2026-10-06T08:00:00Z' }])).toEqual([chest]);
  });
  it('is lifted by taking the report back, and comes again with the next one', () => {
    expect(locksOf([chest, slip], [])).toEqual([]);
    const again = entry('symptom_reported', '2026-10-07T18:00', { symptom: 'chest_pain' });
    expect(locksOf([chest, again], [answer('clear', [chest.id])])).toEqual([again]);
  });
  it('holds for a sign that this version has no words for', () => {
    const odd = entry('symptom_reported', '2026-10-05T18:00', { symptom: 'toString' });
    expect(locksOf([odd], []).map(symptomOf)).toEqual(['other']);
  });
});

describe('what is told of a clearing', () => {
  it('names the signs once each, and is silent of reports of another phone', () => {
    const twice = entry('symptom_reported', '2026-10-05T19:00', { symptom: 'chest_pain' });
    const cleared = clearedOf([chest, twice], [answer('clear', [chest.id, twice.id]), answer('contact', [chest.id])]);
    expect(cleared).toEqual([{ key: 'f1 2026-10-06T08:00:00Z', symptoms: ['chest_pain'] }]);
    expect(clearedOf([], [answer('clear', [chest.id])])).toEqual([]);
  });
});
