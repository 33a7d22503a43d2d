import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { KEEP_AFTER_MS, Keeper, TRY_AGAIN_MS } from './keeper';
import { program } from './testing/arbitrary';
import type { DraftBody } from './types';
import type { Unsent, UnsentStore } from './unsent';

type Answer = { status: number; body?: unknown; etag?: string } | 'offline';
const content = (title: string): DraftBody => ({ content: { ...program([], []), title }, base_number: 2 });

const guardOf = (headers: Headers) => (headers.get('If-None-Match') === '*' ? 'none yet' : headers.get('If-Match'));

/** The server's draft, as far as the keeper can tell: what was sent, and what comes back. */
function server() {
  const sent: { method: string; title: string | undefined; ifMatch: string | null }[] = [];
  const answers: Answer[] = [];
  let version = 0;
  const usual = (method: string): Answer =>
    method === 'GET' ? { status: 404, body: { code: 'not-found' } }
    : method === 'DELETE' ? { status: 204 }
    : { status: 200, body: { saved_at: '2026-11-25T08:22:00Z' }, etag: `"d${++version}"` };
  vi.stubGlobal('fetch', async (_url: string, init: RequestInit) => {
    const body = init.body ? (JSON.parse(String(init.body)) as DraftBody) : null;
    sent.push({ method: init.method!, title: body?.content.title, ifMatch: guardOf(new Headers(init.headers)) });
    const answer = answers.shift() ?? usual(init.method!);
    if (answer === 'offline') throw new TypeError('no network');
    const { status, body: json, etag } = answer;
    return new Response(status === 204 ? null : JSON.stringify(json ?? {}), { status, headers: etag ? { ETag: etag } : {} });
  });
  return { sent, answers, writes: () => sent.filter(({ method }) => method !== 'GET') };
}

function memory(keeps = true): UnsentStore & { held: () => Unsent | null } {
  let held: Unsent | null = null;
  return { read: () => held, keep: (unsent) => ((held = keeps ? unsent : null), keeps), clear: () => void (held = null), held: () => held };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('a draft', () => {
  it('is in this browser at once and on the server after the pause; then only there', async () => {
    const { writes } = server();
    const store = memory();
    const keeper = new Keeper('c1', store, '"d0"', null);
    keeper.want(content('a'));
    expect(store.held()?.draft?.content.title).toBe('a');
    expect(writes()).toEqual([]);
    keeper.want(content('ab'));
    await vi.advanceTimersByTimeAsync(KEEP_AFTER_MS);
    expect(writes()).toEqual([{ method: 'PUT', title: 'ab', ifMatch: '"d0"' }]);
    expect(keeper.status.value).toEqual({ state: 'kept', at: new Date('2026-11-25T08:22:00Z') });
    expect(store.held()).toBeNull();
  });

  it('typed on while it is sent is sent again, guarded by the newest tag', async () => {
    const { writes } = server();
    const keeper = new Keeper('c1', memory(), '"d0"', null);
    keeper.want(content('a'));
    const flushed = keeper.flush();
    keeper.want(content('b'));
    await flushed;
    expect(writes()).toEqual([{ method: 'PUT', title: 'a', ifMatch: '"d0"' }, { method: 'PUT', title: 'b', ifMatch: '"d1"' }]);
  });

  it('stays in this browser without a network, says so, and goes by itself later', async () => {
    const { answers, writes } = server();
    answers.push('offline', 'offline');
    const store = memory();
    const keeper = new Keeper('c1', store, '"d0"', null);
    keeper.want(content('a'));
    await vi.advanceTimersByTimeAsync(KEEP_AFTER_MS);
    expect(keeper.status.value).toMatchObject({ state: 'browser', stored: true });
    expect(store.held()).toMatchObject({ etag: '"d0"', draft: { base_number: 2 } });
    await vi.advanceTimersByTimeAsync(2 * TRY_AGAIN_MS);
    expect(keeper.status.value.state).toBe('kept');
    expect(writes()).toHaveLength(3);
    expect(store.held()).toBeNull();
  });

  it('that not even this browser stores says that the page must stay open', async () => {
    server().answers.push('offline');
    const keeper = new Keeper('c1', memory(false), '"d0"', null);
    keeper.want(content('a'));
    await vi.advanceTimersByTimeAsync(KEEP_AFTER_MS);
    expect(keeper.status.value).toMatchObject({ state: 'browser', stored: false });
  });

  it('that the server refuses is kept here, with the reason, and not sent over and over', async () => {
    const { answers, writes } = server();
    answers.push({ status: 422, body: { title: 'Some answers need a change', detail: '1 field is not valid.' } });
    const store = memory();
    const keeper = new Keeper('c1', store, '"d0"', null);
    keeper.want(content('a'));
    await vi.advanceTimersByTimeAsync(KEEP_AFTER_MS + 5 * TRY_AGAIN_MS);
    expect(keeper.status.value).toEqual({ state: 'refused', detail: '1 field is not valid.' });
    expect(writes()).toHaveLength(1);
    expect(store.held()).not.toBeNull();
  });

  it('is thrown away on the server too', async () => {
    const { writes } = server();
    const keeper = new Keeper('c1', memory(), '"d0"', new Date());
    keeper.want(null);
    await vi.advanceTimersByTimeAsync(KEEP_AFTER_MS);
    expect(writes()).toEqual([{ method: 'DELETE', title: undefined, ifMatch: null }]);
    expect(keeper.status.value).toEqual({ state: 'nothing' });
  });

  it('that never was is not thrown away', async () => {
    const { sent } = server();
    new Keeper('c1', memory(), null, null).want(null);
    await vi.advanceTimersByTimeAsync(KEEP_AFTER_MS);
    expect(sent).toEqual([]);
  });
});

describe('a colleague’s draft', () => {
  const theirs = { content: program([], []), base_number: 2, saved_at: '2026-11-25T08:20:00Z', saved_by: { id: 'x', display_name: 'Ona Reve' }, version: 4 };

  it('is never overwritten without a word: neither a newer one nor one begun meanwhile', async () => {
    for (const etag of ['"d0"', null]) {
      const found = server();
      found.answers.push({ status: 412, body: {} }, { status: 200, body: theirs, etag: '"d4"' });
      const store = memory();
      const keeper = new Keeper('c1', store, etag, null);
      keeper.want(content('mine'));
      await vi.advanceTimersByTimeAsync(KEEP_AFTER_MS);
      expect(keeper.status.value).toMatchObject({ state: 'conflict', theirs: { saved_by: { display_name: 'Ona Reve' } } });
      keeper.want(content('mine, longer'));
      await vi.advanceTimersByTimeAsync(5 * TRY_AGAIN_MS);
      expect(found.writes()).toEqual([{ method: 'PUT', title: 'mine', ifMatch: etag ?? 'none yet' }]);
      expect(store.held()?.draft?.content.title).toBe('mine, longer');
    }
  });

  it('that says just the same is one’s own whose answer was lost', async () => {
    const { answers, writes } = server();
    const mine = content('mine');
    const reordered = { ...theirs, content: Object.fromEntries(Object.entries(mine.content).reverse()) };
    answers.push({ status: 412, body: {} }, { status: 200, body: reordered, etag: '"d4"' });
    const store = memory();
    const keeper = new Keeper('c1', store, '"d0"', null);
    keeper.want(mine);
    await vi.advanceTimersByTimeAsync(KEEP_AFTER_MS);
    expect(keeper.status.value).toEqual({ state: 'kept', at: new Date(theirs.saved_at) });
    expect(store.held()).toBeNull();
    expect(writes()).toHaveLength(1);
  });

  it('is replaced after a person has seen it', async () => {
    const { answers, writes } = server();
    answers.push({ status: 412, body: {} }, { status: 200, body: theirs, etag: '"d4"' });
    const keeper = new Keeper('c1', memory(), '"d0"', null);
    keeper.want(content('mine'));
    await vi.advanceTimersByTimeAsync(KEEP_AFTER_MS);
    keeper.seen('"d4"');
    await vi.advanceTimersByTimeAsync(1);
    expect(writes().at(-1)).toEqual({ method: 'PUT', title: 'mine', ifMatch: '"d4"' });
    expect(keeper.status.value.state).toBe('kept');
  });

  it('that is gone when looked for stands in nobody’s way', async () => {
    const { answers, writes } = server();
    answers.push({ status: 412, body: {} }, { status: 404, body: { code: 'not-found' } });
    const keeper = new Keeper('c1', memory(), '"d0"', null);
    keeper.want(content('mine'));
    await vi.advanceTimersByTimeAsync(KEEP_AFTER_MS + 10);
    expect(writes().map(({ method }) => method)).toEqual(['PUT', 'PUT']);
    expect(keeper.status.value.state).toBe('kept');
  });
});

it('nothing is sent after it was halted for publishing', async () => {
  const { sent } = server();
  const keeper = new Keeper('c1', memory(), '"d0"', null);
  keeper.want(content('a'));
  await keeper.halt();
  keeper.published();
  await vi.advanceTimersByTimeAsync(5 * TRY_AGAIN_MS);
  expect(sent).toEqual([]);
  expect(keeper.status.value).toEqual({ state: 'nothing' });
});
