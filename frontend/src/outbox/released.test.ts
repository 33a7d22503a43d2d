/** A phone that an older build left behind, opened by today's: everything queued is there, and goes. */
import { readdirSync, readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import { Database } from './database';
import type { Event } from './events';
import { foldSessions } from './fold';
import { appendEvent } from './log';
import { DEVICE, entry, freshStorage, Phone } from './testing/phone';
import { FakePractice } from './testing/server';

const FOLDER = new URL('../../../tests/vectors/events/', import.meta.url);
const released = readdirSync(FOLDER).map((file) => ({
  file, events: (JSON.parse(readFileSync(new URL(file, FOLDER), 'utf8')) as { events: Event[] }).events,
}));

/** The database as the first build made it: not to be changed with the app. */
async function firstBuild(events: readonly Event[], keep: Record<string, unknown>): Promise<void> {
  const opening = indexedDB.open('steadfoot', 1);
  opening.onupgradeneeded = () => {
    opening.result.createObjectStore('events', { keyPath: 'seq' }).createIndex('id', 'id', { unique: true });
    opening.result.createObjectStore('keep');
  };
  const db = await new Promise<IDBDatabase>((done) => (opening.onsuccess = () => done(opening.result)));
  const write = db.transaction(['events', 'keep'], 'readwrite');
  for (const event of events) write.objectStore('events').add(event);
  for (const [key, value] of Object.entries(keep)) write.objectStore('keep').put(value, key);
  await new Promise((done) => (write.oncomplete = done));
  db.close();
}

beforeEach(freshStorage);

describe.each(released)('a phone of the build of $file', ({ events }) => {
  const sync = { cursor: 3, epoch: 'epoch-1', acknowledged: 10, refused: [] };

  it('keeps its queue word for word, counts on, and sends it', async () => {
    await firstBuild(events, { device: DEVICE, sync, lastReceivedAt: '2026-06-10T07:00:00.000Z', persisted: true });
    const practice = new FakePractice();
    const held = practice.devices.get('token-1')!;
    for (const { seq, id } of events.slice(0, 10)) held.numbers.set(seq, id);
    const phone = new Phone(practice);
    expect((await phone.state()).events).toEqual(events);
    expect((await appendEvent(phone.db, entry(1))).seq).toBe(events.length + 1);
    await phone.send();
    expect([...practice.stored.values()].slice(0, -1)).toEqual(events.slice(10));
    expect(await phone.acknowledged()).toBe(events.length + 1);
  });

  it('shows what was done, and opens without what that build did not keep', async () => {
    await firstBuild(events, { device: DEVICE });
    const phone = new Phone(new FakePractice());
    const { events: log, kept } = await phone.state();
    expect(foldSessions(log).length).toBeGreaterThan(0);
    expect(kept).toMatchObject({ sync: { acknowledged: 0 }, history: null, questions: null, feed: {} });
    await new Database().probe();
  });
});
