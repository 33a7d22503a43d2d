import { describe, expect, it } from 'vitest';
import { circuit, entry, prescription, walk } from '../testing/sample';
import { expectedMinutes, firstMinutes, plannedLoad } from './estimate';
import { doseFor, rungsAround, type Exercise } from './library';
import { LONGEST_GAP_MIN, minutesFromStones, morningQuestions } from './log';

const ID = '2026-10-05.1';
const stone = (at: string, round = 1, more = {}) => entry('set_ticked', at, { planned_id: ID, prescription: 'p1', round, ...more });
const minutes = (from: string) => `2026-10-05T${from}`;

describe('minutes of a session', () => {
  it('run from the first stone to the last, whatever their order in the log', () => {
    const log = [stone(minutes('18:38'), 2), stone(minutes('18:00')), stone(minutes('18:19'))];
    expect(minutesFromStones(log, ID)).toBe(38);
    expect(minutesFromStones(log.slice(0, 1), ID)).toBeNull();
    expect(minutesFromStones(log, '2026-10-07.1')).toBeNull();
  });
  it('cut a long break short and leave entries for another day away', () => {
    expect(minutesFromStones([stone(minutes('08:00')), stone(minutes('20:00'))], ID)).toBe(LONGEST_GAP_MIN);
    expect(minutesFromStones([stone(minutes('08:00')), stone(minutes('08:30'), 2, { day: '2026-10-04' })], ID)).toBeNull();
  });
  it('begin with the plan when all stones were tapped afterwards', () => {
    expect(firstMinutes([stone(minutes('18:00')), stone(minutes('18:01'))], ID, circuit)).toEqual({ minutes: 30, from: 'plan' });
    expect(firstMinutes([stone(minutes('18:00')), stone(minutes('18:12'))], ID, circuit)).toEqual({ minutes: 12, from: 'stones' });
    expect(firstMinutes([], ID, circuit)).toEqual({ minutes: 30, from: 'plan' });
  });
  it('are estimated from the dose as the practice does', () => {
    // One round: 2 x (10 + 9 x 4) + 45 and 2 x (10 + 30) + 45 = 262 s; two rounds without the last rest: 479 s.
    expect(expectedMinutes({ ...circuit, expected_minutes: null } as never)).toBe(8);
    expect(expectedMinutes(walk)).toBe(150);
    expect(plannedLoad(walk)).toBe(600);
  });
});

const pain = (at: string, rating: number, more = {}) => entry('pain_reported', at, { rating, region: 'knee', side: 'right', aspect: 'front', when: 'during', ...more });
const ask = (log: Parameters<typeof morningQuestions>[0], today = '2026-10-06', yesterday = '2026-10-05') =>
  morningQuestions(log, today, yesterday).map((event) => event.body.rating);

describe('the question of the morning after', () => {
  it('comes once a place, by its strongest report of yesterday', () => {
    expect(ask([pain(minutes('18:00'), 2), pain(minutes('18:20'), 4), pain(minutes('18:30'), 3, { region: 'hip' })])).toEqual([4, 3]);
  });
  it('does not come for no pain, for pain before training, or a day later', () => {
    expect(ask([pain(minutes('18:00'), 0)])).toEqual([]);
    expect(ask([pain(minutes('18:00'), 5, { when: 'before' })])).toEqual([]);
    expect(ask([pain(minutes('18:00'), 5)], '2026-10-07', '2026-10-06')).toEqual([]);
  });
  it('is answered by a report of this morning, and not by another place', () => {
    const log = [pain(minutes('18:00'), 4), pain('2026-10-06T07:00', 1, { when: 'next_morning' })];
    expect(ask(log)).toEqual([]);
    expect(ask([log[0]!, pain('2026-10-06T07:00', 1, { when: 'next_morning', side: 'left' })])).toEqual([4]);
  });
  it('does not ask about a report that was taken back', () => {
    const slip = pain(minutes('18:00'), 4);
    expect(ask([slip, entry('entry_withdrawn', minutes('18:01'), { event_id: slip.id })])).toEqual([]);
  });
});

const ladder = [
  { variant: 'rail', name: 'hand on the rail', short: '', sides: 'each', kit: ['rail'], how: [], dose: { reps: [8, 10] }, load: 'none' },
  { variant: 'step-15', name: '15 cm', short: '', kit: [], how: [], dose: { reps: [8, 12] }, load: 'optional' },
  { variant: 'slow', name: 'hold at the bottom', short: '', sides: 'both', kit: [], how: [], dose: { hold_s: [20, 30] }, load: 'none' },
] as unknown as Exercise['ladder'];
const exercise = { code: 'step-down', name: 'Step-down', ladder } as Exercise;

describe('another rung', () => {
  it('lies above and below the one in use, and nowhere at the ends', () => {
    const names = (variant: string) => {
      const { harder, easier } = rungsAround(exercise, variant);
      return [harder?.variant ?? null, easier?.variant ?? null];
    };
    expect([names('step-15'), names('slow'), names('rail'), names('other')]).toEqual([['slow', 'rail'], [null, 'step-15'], ['step-15', null], [null, null]]);
  });
  it('keeps the dose where it fits, takes its own where one is held and the other counted', () => {
    const prescribed = prescription('p1', { load_kg: 6, tempo_down_s: 3 });
    expect(doseFor(prescribed, ladder[1]!)).toBe(prescribed);
    expect(doseFor(prescribed, ladder[0]!)).toMatchObject({ variant: 'rail', reps_low: 8, reps_high: 10, load_kg: null, tempo_down_s: 3 });
    expect(doseFor(prescribed, ladder[2]!)).toMatchObject({ variant: 'slow', sides: 'both', reps_low: null, hold_s: 20, load_kg: null, tempo_down_s: null });
    expect(doseFor(prescription('p2', { variant: 'slow', reps_low: null, reps_high: null, hold_s: 30 }), ladder[0]!)).toMatchObject({ reps_low: 8, reps_high: 10, hold_s: null });
  });
});
