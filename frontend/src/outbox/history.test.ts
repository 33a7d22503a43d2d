import { beforeEach, describe, expect, it } from 'vitest';
import { Database } from './database';
import { foldSessions, type SessionState } from './fold';
import type { Fetch } from './http';
import { notSaidHere, readHistory, takeHistory } from './history';
import { appendEvent, readAll, useDevice } from './log';
import { DEVICE, entry, freshStorage } from './testing/phone';
import { json, problem } from './testing/server';

beforeEach(freshStorage);

const said = (more: Partial<SessionState> = {}): SessionState => ({
  planned_id: '2026-11-25.1', program_version: 2, sets_done: [['p1', 1], ['p1', 2]], left_out: [], swaps: {}, minutes: 31, effort: 6,
  finished: true, walk: null, ...more,
});
const answer = ({ sets_done, ...state }: SessionState) => ({ since: '2026-05-29', items: [{ ...state, day: '2026-11-25', sets: sets_done }] });
const byId = (...states: SessionState[]) => new Map(states.map((state) => [state.planned_id, state]));

describe('what the practice tells of earlier phones', () => {
  it('is read whole, or not at all', () => {
    expect(readHistory(JSON.stringify(answer(said())))).toEqual({ since: '2026-05-29', items: [said()] });
    for (const text of ['', '<html>Sign in</html>', '{}', 'null', '{"since":"2026-05-29","items":[{}]}', '{"since":1,"items":[]}', '{"since":"2026-05-29","items":[null]}']) {
      expect(readHistory(text)).toBeNull();
    }
  });

  it('keeps only what this phone did not say itself, so that it can be taken back here', () => {
    const own = said({ sets_done: [['p1', 1]], left_out: [['p1', 3, 'pain']], swaps: { p1: 'step-10' }, finished: false, minutes: null, effort: null });
    const told = said({ swaps: { p1: 'step-20', p2: 'knees' }, left_out: [['p1', 3, 'no_time'], ['p2', 1, 'no_kit']] });
    expect(notSaidHere([told], byId(own))).toEqual([said({ sets_done: [['p1', 2]], left_out: [['p2', 1, 'no_kit']], swaps: { p2: 'knees' } })]);
    expect(notSaidHere([said()], byId(said()))).toEqual([]);
    expect(notSaidHere([said()], byId())).toEqual([said()]);
  });

  it('lies under the entries of this phone: sets are united, what is said here wins', () => {
    const own = [
      { kind: 'set_unticked', body: { planned_id: '2026-11-25.1', prescription: 'p1', round: 2 } },
      { kind: 'set_ticked', body: { planned_id: '2026-11-25.1', prescription: 'p2', round: 1 } },
      { kind: 'session_finished', body: { planned_id: '2026-11-25.1', minutes: 40, effort: 3 } },
    ] as const;
    const log = own.map((event, n) => ({ ...entry(n + 1), ...event, seq: n + 1 }));
    expect(foldSessions(log, [said()])).toEqual([said({ sets_done: [['p1', 1], ['p2', 1]], minutes: 40, effort: 3 })]);
    expect(foldSessions([], [said()])).toEqual([said()]);
  });
});

describe('asking for it', () => {
  const told: Fetch = async (path, init) =>
    path === '/api/v1/history' && new Headers(init.headers).get('Authorization') === `Bearer ${DEVICE.token}` ? json(answer(said())) : problem(404, 'not-found');
  const paired = async () => {
    const db = new Database();
    await useDevice(db, DEVICE, '2026-11-25T10:00:00Z');
    return db;
  };

  it('happens once a pairing, and is not counted as saved here', async () => {
    const db = await paired();
    expect(await takeHistory(db, told)).toBe(true);
    const { events, kept } = await readAll(db);
    expect([events, kept.history]).toEqual([[], { device_id: 'device-1', since: '2026-05-29', items: [said()] }]);
    expect(await takeHistory(db, () => Promise.reject(new Error('asked twice')))).toBe(false);
    await useDevice(db, { ...DEVICE, device_id: 'device-2' }, '2026-11-26T10:00:00Z');
    expect(await takeHistory(db, told)).toBe(true);
  });

  it('is tried again after no network, a refusal or the sign-in page of a hotel', async () => {
    const db = await paired();
    const page: Fetch = async () => new Response('<html>Welcome</html>', { status: 200, headers: { 'Content-Type': 'text/html' } });
    for (const trouble of [page, async () => problem(503, 'busy'), () => Promise.reject(new TypeError('no network'))] as Fetch[]) {
      expect(await takeHistory(db, trouble)).toBe(false);
      expect((await readAll(db)).kept.history).toBeNull();
    }
    expect(await takeHistory(db, told)).toBe(true);
  });

  it('waits for a pairing, and forgets it with another person\'s log', async () => {
    const db = new Database();
    expect(await takeHistory(db, told)).toBe(false);
    await useDevice(db, DEVICE, '2026-11-25T10:00:00Z');
    await appendEvent(db, entry(1));
    await takeHistory(db, told);
    await useDevice(db, { ...DEVICE, device_id: 'device-9', client_id: 'client-2' }, '2026-11-26T10:00:00Z');
    expect((await readAll(db)).kept.history).toBeNull();
  });
});
