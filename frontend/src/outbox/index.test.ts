import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Event } from './events';
import { DEVICE, freshStorage } from './testing/phone';
import { Database } from './database';
import { readAll } from './log';
import { FakePractice, problem } from './testing/server';

beforeEach(() => {
  freshStorage();
  vi.resetModules();
  vi.stubGlobal('navigator', {});
  vi.stubGlobal('fetch', () => Promise.reject(new TypeError('no network')));
});

it('removing everything leaves nothing on the phone, and the next entry is number 1 again', async () => {
  const phone = await import('./index');
  await phone.acceptPairing(DEVICE);
  await phone.saveDraft('after', { effort: 4 });
  await phone.record('note_written', { text: 'The knee is fine.' });
  expect([phone.savedCount.value, phone.device.value?.client_name, phone.connection.value]).toEqual([1, 'Emil', expect.stringMatching(/ready|unreachable/)]);

  await phone.removeAll();
  expect([phone.savedCount.value, phone.device.value, phone.program.value, phone.connection.value]).toEqual([0, null, null, 'unpaired']);
  expect(await phone.loadDraft('after')).toBeUndefined();
  const left = await new Database().read(async (tx) => [await tx.objectStore('events').count(), await tx.objectStore('keep').getAllKeys()]);
  expect(left).toEqual([0, []]);
  expect((await phone.record('note_written', { text: 'Begun anew.' })).seq).toBe(1);
});

it.each([[true], [false]])('the browser is asked at pairing to keep what is here, and its answer (%s) is kept', async (answer) => {
  const persist = vi.fn(async () => answer);
  vi.stubGlobal('navigator', { storage: { persist } });
  const phone = await import('./index');
  await phone.acceptPairing(DEVICE);
  expect([persist.mock.calls.length, phone.persisted.value]).toEqual([1, answer]);
  expect((await readAll(new Database())).kept.persisted).toBe(answer);
});

it('entries made together are numbered and timed in their order', async () => {
  const phone = await import('./index');
  const set = { planned_id: '2026-11-25.1', prescription: 'p1', round: 1 };
  const stored = await phone.recordAll([{ kind: 'session_started', body: { planned_id: set.planned_id } }, { kind: 'set_ticked', body: set }], { 'draft.rest': 1 });
  expect(stored.map((event) => [event.seq, event.kind])).toEqual([[1, 'session_started'], [2, 'set_ticked']]);
  expect(stored[0]!.recorded_at < stored[1]!.recorded_at && stored[0]!.id < stored[1]!.id).toBe(true);
  expect(await phone.loadDraft('rest')).toBe(1);
});

it('what cannot be removed is said, and is still there', async () => {
  const phone = await import('./index');
  await phone.acceptPairing(DEVICE);
  await phone.record('note_written', { text: 'The knee is fine.' });
  const spy = vi.spyOn(IDBObjectStore.prototype, 'clear').mockImplementation(() => {
    throw new DOMException('no', 'UnknownError');
  });
  await expect(phone.removeAll()).rejects.toThrow(phone.NotSaved);
  spy.mockRestore();
  expect(phone.savedCount.value).toBe(1);
  expect(JSON.parse(await phone.exportText()).events).toHaveLength(1);
});

it('an entry that could not be sent is never counted as received, and keeps nothing else waiting', async () => {
  const practice = new FakePractice();
  vi.stubGlobal('fetch', practice.fetch);
  const phone = await import('./index');
  await phone.acceptPairing(DEVICE);
  const [first] = await phone.recordAll([{ kind: 'note_written', body: { text: 'large' } }, { kind: 'note_written', body: { text: 'small' } }]);
  practice.poison.set(first!.id, problem(413, 'too-large'));
  await phone.sendNow();
  expect([phone.savedCount.value, phone.receivedCount.value, phone.waitingSince.value]).toEqual([2, 1, null]);
  expect([phone.unsendable.value.length, phone.refused.value.length]).toEqual([1, 0]);
  practice.poison.clear();
  await phone.tryAgain();
  expect([phone.receivedCount.value, phone.unsendable.value]).toEqual([2, []]);
});

describe('another page of this phone', () => {
  const note = (text: string) => ({ kind: 'note_written' as const, body: { text } });
  const texts = (events: readonly Event[]) => events.map((event) => event.body.text);

  it('may write in between: this page takes over what it did not write itself', async () => {
    const practice = new FakePractice();
    vi.stubGlobal('fetch', practice.fetch);
    const [here, there] = [await import('./index'), await (vi.resetModules(), import('./index'))];
    await here.acceptPairing(DEVICE);
    await here.recordAll([note('here 1')]);
    await there.recordAll([note('there 2'), note('there 3')]);
    await here.recordAll([note('here 4')]);
    await here.sendNow();
    expect(texts(here.events.value)).toEqual(['here 1', 'there 2', 'there 3', 'here 4']);
    await there.recordAll([note('there 5')]);
    await here.sendNow();
    expect(texts(here.events.value)).toHaveLength(5);
    const received = texts([...practice.stored.values()].sort((a, b) => a.seq - b.seq));
    expect(received.filter((text) => /here/.test(String(text)))).toEqual(texts(here.events.value));
  });

  it('may remove everything, or begin anew', async () => {
    const practice = new FakePractice();
    vi.stubGlobal('fetch', practice.fetch);
    const [here, there] = [await import('./index'), await (vi.resetModules(), import('./index'))];
    await here.acceptPairing(DEVICE);
    await here.recordAll([note('here 1'), note('here 2')]);
    await there.removeAll();
    await there.acceptPairing(DEVICE);
    await there.recordAll([note('there 1')]);
    await here.sendNow();
    expect(texts(here.events.value)).toEqual(['there 1']);
  });
});

describe('what the phone had is gone', () => {
  beforeEach(() => {
    const kept = new Map<string, string>();
    vi.stubGlobal('localStorage', {
      getItem: (key: string) => kept.get(key) ?? null, setItem: (key: string, value: string) => kept.set(key, value), removeItem: (key: string) => kept.delete(key),
    });
  });
  const startAgain = async () => {
    vi.resetModules();
    vi.stubGlobal('addEventListener', () => undefined);
    vi.stubGlobal('document', { addEventListener: () => undefined });
    const phone = await import('./index');
    await phone.start();
    return phone;
  };

  it('is said at the next start, with how much had not been sent, until it is paired again', async () => {
    const phone = await import('./index');
    await phone.acceptPairing(DEVICE);
    await phone.record('note_written', { text: 'never sent' });
    freshStorage();
    const after = await startAgain();
    expect(after.gone.value).toEqual({ practice: 'Thornwater', unsent: 1 });
    await after.acceptPairing(DEVICE);
    expect(after.gone.value).toBeNull();
    expect((await startAgain()).gone.value).toBeNull();
  });

  it('is not said where a person removed it, nor on a phone that was never paired', async () => {
    expect((await startAgain()).gone.value).toBeNull();
    const phone = await import('./index');
    await phone.acceptPairing(DEVICE);
    await phone.removeAll();
    expect((await startAgain()).gone.value).toBeNull();
  });
});

it('a clock that is off is told by both times of the same moment, and nothing is refused for it', async () => {
  const practice = new FakePractice();
  vi.stubGlobal('fetch', practice.fetch);
  const phone = await import('./index');
  await phone.acceptPairing(DEVICE);
  await phone.sendNow();
  expect(phone.clocks.value).toEqual({ phone: phone.lastReceivedAt.value, practice: '2026-11-25T10:00:00+00:00' });
  vi.spyOn(Date, 'now').mockReturnValue(Date.parse('2026-11-25T10:04:00Z'));
  await phone.sendNow();
  expect(phone.clocks.value).toBeNull();
});
