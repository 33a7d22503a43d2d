import { describe, expect, it, vi } from 'vitest';
import { setLanguage } from '../../shared/words/mechanism';
import type { CaseloadRow } from '../api/types';
import { heardWords } from '../parts/heard';
import { ratioWords } from '../parts/ratio';
import { countChanges, groupWords, happenedWords, hasName, headline, nextStep, tripWords, whoWords } from './sentences';

vi.stubGlobal('navigator', { languages: ['en-GB', 'de-AT'] });
vi.stubGlobal('document', { documentElement: { lang: 'en' } });

const row = (over: Partial<CaseloadRow> = {}): CaseloadRow => ({
  client: { id: 'c1', display_name: 'Emil Tarrow', age: 47 },
  goal: { name: 'Harrowcomb traverse', date: '2027-01-09', days_to: 45 },
  weeks_to_trip: 6,
  place: 1,
  group: 'needs_you',
  ready: 0,
  reason: { rule: 'pain_rising', sentence: 'Right knee hurt 5 of 10 on Monday.', since: '2026-11-10', kind: 'derived', source: 'silbernagel-2007' },
  happened: '3 of 3 sessions done.',
  suggestion: { sentence: 'Ease off one rung.', flag_id: 'f1', action: 'ease_off' },
  adherence: {} as CaseloadRow['adherence'],
  last_heard_at: null, pain: null, open_flags: [], last_days: [],
  ridge: { weeks: [], today: '2026-11-25', heard_until: null, goal: null },
  ...over,
});

describe('headline', () => {
  it('says counts as words up to twelve and as digits after', async () => {
    await setLanguage('en');
    expect(headline({ people: 11, need_you: 3, silent: 2 })).toBe('Three of eleven people need you today');
    expect(headline({ people: 24, need_you: 1, silent: 0 })).toBe('One of 24 people needs you today');
    expect(headline({ people: 4, need_you: 0, silent: 4 })).toBe('Nobody needs you today');
    expect(headline({ people: 1, need_you: 1, silent: 0 })).toBe('The one person here needs you today');
    expect(headline({ people: 0, need_you: 0, silent: 0 })).toBe('Nobody here yet');
  });
  it('is a German sentence in German', async () => {
    await setLanguage('de');
    expect(headline({ people: 11, need_you: 3, silent: 2 })).toBe('Drei von elf Personen brauchen Sie heute');
    expect(headline({ people: 11, need_you: 1, silent: 2 })).toBe('Eine von elf Personen braucht Sie heute');
    expect(groupWords('silent', 2).text).toBe('Zwei Handys haben sich nicht gemeldet. Das ist nicht dasselbe wie versäumt.');
    await setLanguage('en');
  });
});

describe('a row', () => {
  it('names person and trip', () => {
    expect(whoWords(row())).toBe('47, Harrowcomb traverse, in\u00a045\u00a0days');
    expect(whoWords(row({ client: { id: 'c', display_name: 'X', age: null }, goal: null }))).toBe('no trip yet');
    expect(tripWords({ name: 'Lantern loop', date: '2026-11-25', days_to: 0 })).toBe('Lantern loop, today');
    expect(tripWords({ name: 'Lantern loop', date: '2026-11-24', days_to: -1 })).toBe('Lantern loop, 1 day ago');
  });
  it('tells the reason once', () => {
    expect(happenedWords(row())).toBe('Right knee hurt 5 of 10 on Monday.');
    expect(happenedWords(row({ reason: { ...row().reason, sentence: '' } }))).toBe('3 of 3 sessions done.');
  });
  it('has one button, which leads to the finding it is about', () => {
    expect(nextStep(row())).toEqual({ does: 'decide', to: '/clients/c1?flag=f1' });
    const plain = { sentence: 'Ask.', flag_id: null, action: null };
    expect(nextStep(row({ suggestion: plain }))).toEqual({ does: 'write', to: null });
    expect(nextStep(row({ group: 'no_program', suggestion: plain }))?.to).toBe('/clients/c1/program');
    expect(nextStep(row({ suggestion: plain, reason: { ...row().reason, rule: 'never_paired' } }))?.does).toBe('phones');
    expect(nextStep(row({ suggestion: plain, reason: { ...row().reason, rule: 'refused_entries' } }))?.to).toBe('/clients/c1?at=aside');
    expect(nextStep(row({ suggestion: null }))).toBeNull();
  });
});

describe('news', () => {
  const other = row({ client: { id: 'c2', display_name: 'Dora', age: 55 } });
  it('counts what is new, gone or changed', () => {
    expect(countChanges([row(), other], [row(), other])).toBe(0);
    expect(countChanges([row(), other], [row()])).toBe(1);
    expect(countChanges([row()], [row({ happened: 'Other.' }), other])).toBe(2);
  });
  const at = (id: string, place: number) => row({ client: { id, display_name: id, age: null }, place });
  it('counts who moved, not all who stand lower for it', () => {
    const shown = ['a', 'b', 'c', 'd', 'e'].map((id, i) => at(id, i + 1));
    const latest = ['d', 'a', 'b', 'c', 'e'].map((id, i) => at(id, i + 1));
    expect(countChanges(shown, latest)).toBe(1);
    expect(countChanges(latest, [at('new', 1), ...latest.map((one) => ({ ...one, place: one.place + 1 }))])).toBe(1);
  });
});

it('finds names without minding case and accents', () => {
  expect(hasName('Jörg Ålund', 'jorg al')).toBe(true);
  expect(hasName('Emil Tarrow', ' TARR ')).toBe(true);
  expect(hasName('Emil Tarrow', 'dora')).toBe(false);
});

describe('adherence', () => {
  it('is a range while something is not heard, and one number only when all is', () => {
    expect(ratioWords({ prescribed: 12, done: 9, low: 0.75, high: 0.75 })).toBe('9 of 12');
    expect(ratioWords({ prescribed: 12, done: 9, low: 0.75, high: 1 })).toBe('9 of 12; 9 to 12 until heard');
    expect(ratioWords({ prescribed: 0, done: 0, low: null, high: null })).toBe('nothing planned');
  });
});

describe('last heard', () => {
  const now = new Date('2026-11-25T08:10:00Z');
  it('goes by the day of the practice', () => {
    expect(heardWords('2026-11-25T05:50:00Z', now, 'Europe/Vienna')).toBe('heard today 6:50');
    expect(heardWords('2026-11-24T23:30:00Z', now, 'Europe/Vienna')).toBe('heard today 0:30');
    expect(heardWords('2026-11-23T17:09:00Z', now, 'Europe/Vienna')).toBe('heard until Mon 18:09');
  });
  it('names silence from five days on', () => {
    expect(heardWords('2026-11-21T12:00:00Z', now, 'UTC')).toBe('heard until Sat 12:00');
    expect(heardWords('2026-11-20T12:00:00Z', now, 'UTC')).toBe('not heard since Fri 20 Nov');
    expect(heardWords(null, now, 'UTC')).toBe('no phone heard yet');
  });
});
