import { IDBDatabase, IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Blocked, BLOCKED_AFTER_MS, Database, OPEN_WITHIN_MS, NotSaved, PhoneFull } from './database';
import { appendEvent, appendEvents, getKept, readAll } from './log';
import { entry, freshStorage } from './testing/phone';

beforeEach(freshStorage);
afterEach(() => vi.restoreAllMocks());

/** Makes the n-th storage call throw, `times` calls in a row; answers how many calls were made. */
function failAt(n: number, name: string, times = 1): () => number {
  let calls = 0;
  const spoil = (target: object, method: string) => {
    const real = (target as Record<string, (...args: unknown[]) => unknown>)[method]!;
    vi.spyOn(target as Record<string, () => unknown>, method as never).mockImplementation(function (this: unknown, ...args: unknown[]) {
      calls += 1;
      if (calls >= n && calls < n + times) throw new DOMException('Connection to Indexed Database server lost', name);
      return real.apply(this, args);
    } as never);
  };
  spoil(IDBFactory.prototype, 'open');
  spoil(IDBDatabase.prototype, 'transaction');
  for (const method of ['get', 'add', 'put', 'index', 'openKeyCursor']) spoil(IDBObjectStore.prototype, method);
  return () => calls;
}

describe('writing an entry', () => {
  it('numbers entries 1, 2, 3 without gaps, also when written at once', async () => {
    const db = new Database();
    await Promise.all([1, 2, 3, 4, 5].map((n) => appendEvent(db, entry(n))));
    expect((await readAll(db)).events.map((event) => event.seq)).toEqual([1, 2, 3, 4, 5]);
  });

  it('asks for strict durability and answers only after complete', async () => {
    const db = new Database();
    await db.probe();
    const order: string[] = [];
    const real = IDBDatabase.prototype.transaction;
    const spy = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, ...args) {
      const tx = real.apply(this, args as never);
      tx.addEventListener('complete', () => order.push('complete'));
      return tx;
    });
    await appendEvent(db, entry(1)).then(() => order.push('answered'));
    expect(order).toEqual(['complete', 'answered']);
    expect(spy.mock.calls[0]![2]).toEqual({ durability: 'strict' });
  });

  it('stores the page\'s own copy with the entry, or neither', async () => {
    const db = new Database();
    await appendEvent(db, entry(1), { 'draft.after': { effort: 4 } });
    expect(await getKept(db, 'draft.after')).toEqual({ effort: 4 });
    await appendEvent(db, entry(2), { 'draft.after': undefined });
    expect(await getKept(db, 'draft.after')).toBeUndefined();
    await expect(appendEvent(db, entry(3), { 'draft.after': () => 'no value' })).rejects.toThrow(NotSaved);
    expect((await readAll(db)).events).toHaveLength(2);
  });

  it('is one transaction, however much belongs together', async () => {
    const db = new Database();
    await db.probe();
    const spy = vi.spyOn(IDBDatabase.prototype, 'transaction');
    await appendEvents(db, [entry(1), entry(2), entry(3)], { 'draft.after': 1, 'draft.rest': undefined });
    expect(spy).toHaveBeenCalledTimes(1);
  });

  it('that waits for something else in the middle is told as not saved', async () => {
    const db = new Database();
    const strange = db.write(async (tx) => {
      await tx.objectStore('keep').put(1, 'first');
      await new Promise((later) => setTimeout(later, 20));
      await tx.objectStore('keep').put(2, 'second');
    });
    await expect(strange).rejects.toThrow(NotSaved);
    expect(await getKept(db, 'second')).toBeUndefined();
  });

  it('writes an id once, however often it is tried', async () => {
    const db = new Database();
    const first = await appendEvent(db, entry(1));
    expect(await appendEvent(db, entry(1))).toEqual(first);
    expect((await readAll(db)).events).toHaveLength(1);
  });
});

describe('when storage fails', () => {
  // The loop ends when a run meets no fault: then every call the flow makes has been made to fail once.
  it('once, at any call, the entry is stored all the same, once', async () => {
    let n = 1;
    for (; n < 60; n += 1) {
      freshStorage();
      await new Database().probe(); // the making of the stores is the browser's own affair
      const calls = failAt(n, 'UnknownError');
      await appendEvent(new Database(), entry(1));
      const reached = calls() >= n;
      vi.restoreAllMocks();
      expect((await readAll(new Database())).events).toMatchObject([{ seq: 1, id: entry(1).id }]);
      if (!reached) break;
    }
    expect(n).toBeGreaterThan(5);
    expect(n).toBeLessThan(60);
  });

  it('for good, at any call, it never answers as if it were saved', async () => {
    for (let n = 1; n < 6; n += 1) {
      freshStorage();
      await new Database().probe();
      failAt(n, 'InvalidStateError', 1000);
      await expect(appendEvent(new Database(), entry(1))).rejects.toThrow(NotSaved);
      vi.restoreAllMocks();
      expect((await readAll(new Database())).events).toEqual([]);
    }
  });

  it('says when the phone is full, and goes on when there is room', async () => {
    const db = new Database();
    await db.probe();
    vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    await expect(appendEvent(db, entry(1))).rejects.toThrow(PhoneFull);
    vi.restoreAllMocks();
    expect(await appendEvent(db, entry(1))).toMatchObject({ seq: 1 });
  });

  it('takes a new connection after the old one was closed behind its back', async () => {
    const db = new Database();
    await appendEvent(db, entry(1));
    const real = IDBDatabase.prototype.transaction;
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementationOnce(function (this: IDBDatabase, ...args) {
      this.close();
      return real.apply(this, args as never);
    });
    expect(await appendEvent(db, entry(2))).toMatchObject({ seq: 2 });
  });

  it('the probe finds storage that refuses to be used', async () => {
    failAt(1, 'SecurityError', 1000);
    await expect(new Database().probe()).rejects.toThrow(NotSaved);
  });
});

describe('two pages of different builds', () => {
  it('the older page lets go and says that it is outdated', async () => {
    let outdated = false;
    await new Database(() => (outdated = true)).probe();
    const request = indexedDB.open('steadfoot', 99);
    await new Promise((resolve) => (request.onsuccess = resolve));
    expect(outdated).toBe(true);
    request.result.close();
  });

  /** As a newer build would ask for it. */
  const newer = () => {
    const real = IDBFactory.prototype.open;
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(function (this: IDBFactory, name) {
      return real.call(this, name, 2);
    });
  };
  const turns = async () => {
    for (let turn = 0; turn < 20; turn += 1) await new Promise((resolve) => setImmediate(resolve));
  };

  it('a page that is blocked says so after a moment, and goes on by itself when the other page is closed', async () => {
    await appendEvent(new Database(), entry(1));
    const older = indexedDB.open('steadfoot', 1); // a page that does not let go
    await new Promise((resolve) => (older.onsuccess = resolve));
    newer();
    const onFree = vi.fn();
    const db = new Database(undefined, onFree);
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    for (let tries = 0; tries < 2; tries += 1) {
      const settled = expect(db.probe()).rejects.toThrow(Blocked);
      await turns();
      await vi.advanceTimersByTimeAsync(BLOCKED_AFTER_MS + 1);
      await settled;
    }
    vi.useRealTimers();
    expect(onFree).not.toHaveBeenCalled();
    older.result.close();
    expect((await appendEvent(db, entry(2))).seq).toBe(2);
    expect(onFree).toHaveBeenCalledTimes(1);
    expect((await readAll(db)).events).toHaveLength(2);
  });

  it('a connection that comes too late is let go, so that it holds up nobody', async () => {
    const opened: IDBDatabase[] = [];
    const real = IDBFactory.prototype.open;
    let answer: () => void = () => undefined;
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementationOnce(function (this: IDBFactory, ...args: unknown[]) {
      const request = real.apply(this, args as never);
      request.addEventListener('success', () => opened.push(request.result));
      const listen = request.addEventListener.bind(request);
      vi.spyOn(request, 'addEventListener').mockImplementation((type: string, run: unknown) => {
        if (type !== 'success') return listen(type as never, run as never);
        answer = () => (run as (event: unknown) => void)({ target: request });
      });
      return request;
    } as never);
    const db = new Database();
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    const first = appendEvent(db, entry(1));
    await turns();
    await vi.advanceTimersByTimeAsync(OPEN_WITHIN_MS + 1);
    vi.useRealTimers();
    expect((await first).seq).toBe(1); // on a second connection
    const closed = vi.spyOn(IDBDatabase.prototype, 'close');
    answer();
    await turns();
    expect(closed.mock.contexts).toEqual(opened);
  });

  it('an open that comes after it was given up holds nobody else up', async () => {
    const older = indexedDB.open('steadfoot', 1);
    await new Promise((resolve) => (older.onsuccess = resolve));
    const real = IDBFactory.prototype.open;
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementationOnce(function (this: IDBFactory, name) {
      return real.call(this, name, 2);
    });
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    const settled = expect(new Database().read(async () => 1)).rejects.toThrow(Blocked);
    for (let turn = 0; turn < 20; turn += 1) await new Promise((resolve) => setImmediate(resolve));
    await vi.advanceTimersByTimeAsync(OPEN_WITHIN_MS + 1);
    await settled;
    vi.useRealTimers();
    older.result.close();
    const newer = indexedDB.open('steadfoot', 3);
    let blocked = false;
    newer.onblocked = () => (blocked = true);
    await new Promise((resolve) => (newer.onsuccess = resolve));
    expect(blocked).toBe(false);
    newer.result.close();
  });
});
