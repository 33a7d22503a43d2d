import { beforeEach, expect, it, vi } from 'vitest';
import { DEVICE, freshStorage } from './testing/phone';
import { Database } from './database';
import { appendEvent } from './log';
import { json } from './testing/server';
import { uuid7 } from './uuid7';

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

it('what another page of this phone wrote is shown once this one has sent it', async () => {
  const phone = await import('./index');
  await phone.acceptPairing(DEVICE);
  await phone.record('note_written', { text: 'Written here.' });
  const other = { id: uuid7(1_800_000_000_000), kind: 'note_written' as const, recorded_at: '2026-11-25T08:00:00.000+01:00', body: { text: 'Written there.' } };
  await appendEvent(new Database(), other);
  const reply = { server_epoch: 'e', server_time: '2026-11-25T07:00:00Z', acknowledged_through: 2, refused: [], changes: [], cursor: 0 };
  vi.stubGlobal('fetch', (url: string) => Promise.resolve(json(url.endsWith('/sync') ? reply : {})));
  await phone.sendNow();
  expect(phone.events.value.map((event) => event.body.text)).toEqual(['Written here.', 'Written there.']);
  expect([phone.savedCount.value, phone.receivedCount.value]).toEqual([2, 2]);
});
