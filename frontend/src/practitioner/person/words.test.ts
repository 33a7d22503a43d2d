import { describe, expect, it, vi } from 'vitest';
import type { Flag, TimelineItem } from '../api/types';
import { problemWords, readable } from './Aside';
import { bodyOf, decidedWords, decisionWords, giveWords, lacks, orderedAnswers, shortCitation, takesWords } from './answers';
import { spanOf } from './Strip';
import { painSentence, tableLines } from './StripTable';
import { tellTimeline, wholeDays } from './tellTimeline';

vi.stubGlobal('navigator', { languages: ['en-GB'] });

describe('answers', () => {
  const empty = { note: ' ', message: ' ' };
  it('ask for what the server needs before it is sent', () => {
    expect(lacks({ action: 'close', ...empty })).toEqual({ note: 'Please write in a sentence why nothing more is to be done.' });
    expect(lacks({ action: 'hold', ...empty })).toHaveProperty('message');
    expect(lacks({ action: 'ease_off', ...empty })).toEqual({});
    expect(lacks({ action: 'message', note: '', message: 'Hello' })).toEqual({});
  });
  it('send a message only with an answer that is one', () => {
    const typed = { note: 'Called.', message: 'Please rest.' };
    expect(bodyOf({ action: 'ease_off', ...typed })).toEqual({ action: 'ease_off', note: 'Called.' });
    expect(bodyOf({ action: 'hold', ...typed })).toEqual({ action: 'hold', note: 'Called.', message: 'Please rest.' });
  });
  it('begin with what is suggested and end with closing', () => {
    const answers = (['acknowledge', 'close', 'hold', 'ease_off'] as const).map((action) => ({ action }));
    const suggestion: Flag['suggestion'] = { action: 'ease_off', sentence: '', effect: '' };
    expect(orderedAnswers({ answers, suggestion })).toEqual(['ease_off', 'acknowledge', 'hold', 'close']);
  });
  it('with words are given by a second button that says what it does', () => {
    expect((['ease_off', 'acknowledge', 'hold', 'message', 'close'] as const).filter(takesWords)).toEqual(['hold', 'message', 'close']);
    expect(giveWords('hold', 'effort_rising')).toBe('Hold the dose, send the message');
    expect(giveWords('hold', 'red_flag_symptom')).toBe('Stop training, send the message');
    expect(giveWords('close', 'pain_rising')).toBe('Close this finding');
  });
  it.each([
    ['Silbernagel KG, Thomee R, Eriksson BI, Karlsson J', 'Silbernagel and others 2007'],
    ['Foster C, Florhaug JA', 'Foster and Florhaug 2007'],
    ['World Health Organization', 'World Health Organization 2007'],
  ])('cite %s in a few words', (authors, said) => expect(shortCitation({ authors, year: '2007' })).toBe(said));
  it('say what became of them', () => {
    expect(decidedWords('ease_off', { program_number: 7 })).toBe('Version 7 published. The phone takes it at its next contact.');
    expect(decidedWords('hold', { program_number: null })).toBe('Message sent. The phone takes it at its next contact.');
    const decision = { action: 'ease_off', note: 'Called.', message: '', decided_at: '2026-11-25T12:00:00Z', by: 'Maren Brandvold', program_number: 7 } as const;
    expect(decisionWords(decision)).toBe('Wed 25 Nov, Maren Brandvold: Ease off one rung, version 7. “Called.”');
  });
});

describe('timeline', () => {
  const item = (kind: string, local_date: string, body: Record<string, unknown>, event_id = kind): TimelineItem =>
    ({ at: `${local_date}T10:00:00Z`, local_date, kind, source: 'client', event_id, body });
  const tick = (round: number) => item('set_ticked', '2026-11-23', { planned_id: '2026-11-23.1', prescription: 'p1', round }, `t${round}`);
  const names = new Map([['2026-11-23.1', 'Braking legs']]);
  it('tells ticks of a session as one sentence, newest day and newest entry first', () => {
    const told = tellTimeline([tick(1), tick(2), tick(3), item('session_finished', '2026-11-23', { planned_id: '2026-11-23.1', effort: 6, minutes: 16 }), item('note_written', '2026-11-24', { text: 'Fine.' })], names);
    expect(told.map(({ day }) => day)).toEqual(['2026-11-24', '2026-11-23']);
    expect(told[1]!.sentences.map(({ text }) => text)).toEqual(['Braking legs was finished: effort 6 of 10, 16 minutes.', '3 sets ticked in Braking legs.']);
  });
  it('tells a day only when no earlier page can add to it, also where someone caught up', () => {
    const note = (local_date: string, at = local_date) => ({ ...item('note_written', local_date, { text: 'Fine.' }, `${local_date} ${at}`), at: `${at}T10:00:00+01:00` });
    const items = [note('2026-11-25'), note('2026-11-02', '2026-11-24'), note('2026-11-24'), note('2026-11-23'), note('2026-11-22')];
    const days = (next: string | null) => wholeDays({ items, next }, names).map(({ day }) => day);
    expect(days('more')).toEqual(['2026-11-25', '2026-11-24', '2026-11-23']);
    expect(days(null)).toEqual(['2026-11-25', '2026-11-24', '2026-11-23', '2026-11-22', '2026-11-02']);
    expect(wholeDays({ items: [], next: null }, names)).toEqual([]);
  });
  it('has a sentence for every kind, with nothing left unfilled', () => {
    const items = [
      item('session_started', '2026-11-23', { planned_id: '2026-11-20.1' }), item('set_unticked', '2026-11-23', { planned_id: '2026-11-23.1' }),
      item('set_left_out', '2026-11-23', { planned_id: '2026-11-23.1', reason: 'too_hard' }), item('variant_swapped', '2026-11-23', { to_variant: 'rail' }), item('variant_swapped', '2026-11-23', { exercise: 'squat', to_variant: 'free' }), item('set_ticked', '2026-11-23', { exercise: 'squat' }),
      item('walk_logged', '2026-11-23', { distance_km: 7.6, ascent_m: 250, descent_m: 250, minutes: 147, pack_kg: 4 }),
      item('pain_reported', '2026-11-23', { rating: 5, region: 'knee', side: 'right', when: 'during', aspect: 'front' }),
      item('symptom_reported', '2026-11-23', { symptom: 'calf_swelling' }), item('entry_withdrawn', '2026-11-23', {}), item('message_read', '2026-11-23', {}),
      item('of_tomorrow', '2026-11-23', {}),
    ];
    const told = tellTimeline(items, names).flatMap(({ sentences }) => sentences.map(({ text }) => text)).reverse();
    expect(told).toHaveLength(items.length);
    for (const text of told) expect(text).not.toMatch(/[{}]|undefined/);
    expect(told[0]).toBe('The session of Fri 20 Nov was begun.');
    expect(told).toContain('Right knee, front: pain 5 of 10, while moving.');
    expect(told).toContain('A walk: 7.6 km, 250 m up, 250 m down, 147 minutes, 4 kg carried.');
  });
});

it('shows six weeks, or where it is narrow two', () => {
  expect(spanOf('2026-11-25', false)).toEqual({ from: '2026-10-26', to: '2026-12-06' });
  expect(spanOf('2026-11-25', true)).toEqual({ from: '2026-11-16', to: '2026-11-29' });
});

it('puts a day with pain alone into the table too', () => {
  const pain = { event_id: 'e', day: '2026-11-24', at: '', rating: 4, region: 'knee', side: 'right', aspect: null, when: 'next_morning', planned_id: null } as const;
  const day = { planned_id: '2026-11-23.1', date: '2026-11-23' } as never;
  expect(tableLines([day], [pain]).map(({ day: date, item }) => [date, item !== null])).toEqual([['2026-11-24', false], ['2026-11-23', true]]);
  expect(painSentence(pain)).toBe('4 of 10, right knee, next morning');
});

describe('entries kept aside', () => {
  it('are shown whole, also when they are no JSON', () => {
    expect(readable('{"a":1}')).toBe('{\n  "a": 1\n}');
    expect(readable('{"a":')).toBe('{"a":');
  });
  it('name each fault', () => {
    expect(problemWords({ detail: 'Not valid.', errors: [{ pointer: '/distance_km', detail: 'must be a number' }] })).toBe('Not valid. distance_km: must be a number');
    expect(problemWords({})).toBe('no reason was given');
  });
});
