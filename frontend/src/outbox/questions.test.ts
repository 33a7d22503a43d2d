import { beforeEach, describe, expect, it } from 'vitest';
import { Database } from './database';
import { readAll, useDevice } from './log';
import { readQuestions, takeQuestions } from './questions';
import { DEVICE, freshStorage } from './testing/phone';

const one = { code: 'active', question: 'Have you?', help: 'Count walks.', maps_to: 'regular_activity' };
const answer = (value: unknown, status = 200) => async () => new Response(JSON.stringify(value), { status });

describe('the health questions', () => {
  beforeEach(freshStorage);
  it('are read whole or not at all', () => {
    expect(readQuestions(JSON.stringify({ items: [one] }))).toEqual([one]);
    for (const items of [[], [one, { ...one, maps_to: 'other' }], [{ ...one, code: 1 }], undefined]) {
      expect(readQuestions(JSON.stringify({ items }))).toBeNull();
    }
    expect(readQuestions('<html>Sign in to the hotel</html>')).toBeNull();
  });
  it('are fetched once a pairing, and asked for again while they never came', async () => {
    const db = new Database();
    expect(await takeQuestions(db, answer({ items: [one] }))).toBe(false);
    await useDevice(db, DEVICE, '2026-11-25T10:00:00Z');
    expect(await takeQuestions(db, answer({}, 503))).toBe(false);
    expect(await takeQuestions(db, answer({ items: [one] }))).toBe(true);
    expect((await readAll(db)).kept.questions?.items).toEqual([one]);
    expect(await takeQuestions(db, answer({ items: [] }))).toBe(false);
    await useDevice(db, { ...DEVICE, device_id: 'device-2' }, '2026-11-25T10:00:00Z');
    expect(await takeQuestions(db, answer({ items: [one, one] }))).toBe(true);
  });
});
