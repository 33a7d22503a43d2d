/** The log on the phone: what was entered, what is known of the practice, and drafts. */
import type { Database, Read, Write } from './database';
import type { Event } from './events';
import type { History } from './history';
import type { Questions } from './questions';
import { isNotSent, STARTING, type SyncState } from './sync';

export type PairingStatus = 'active' | 'awaiting_confirmation';
/** This phone's key. `client_id` tells whether a later pairing is for the same person. */
export interface Device {
  device_id: string;
  token: string;
  client_id: string | null;
  client_name: string;
  practice_name: string;
  practitioner_name: string;
  pairing_id: string;
  status: PairingStatus;
  check_number: string;
}

export interface Kept {
  sync: SyncState;
  device: Device | null;
  lastReceivedAt: string | null;
  /** The practice's clock at that moment. */
  serverTime: string | null;
  persisted: boolean | null;
  feed: Record<string, unknown>;
  /** What earlier phones have said; null until the practice was asked. */
  history: History | null;
  /** The health questions; null until they were fetched. */
  questions: Questions | null;
}

/** Writes events and, in the same transaction, the page's own copy of what it shows. Answers when all of it is on the phone. */
export function appendEvents(
  db: Database, fresh: readonly Omit<Event, 'seq'>[], also: Readonly<Record<string, unknown>> = {},
): Promise<Event[]> {
  return db.write(async (tx) => {
    const stored: Event[] = [];
    for (const event of fresh) stored.push(await appendOne(tx, event));
    await putAll(tx, also);
    return stored;
  });
}

async function appendOne(tx: Write, event: Omit<Event, 'seq'>): Promise<Event> {
  const events = tx.objectStore('events');
  // A first try may have been stored though its answer was lost: the id finds it, and it is not written twice.
  const there = await events.index('id').get(event.id);
  if (there) return there;
  const last = await events.openKeyCursor(null, 'prev');
  const stored: Event = { ...event, seq: (last?.key ?? 0) + 1 };
  await events.add(stored);
  return stored;
}

export const appendEvent = async (db: Database, event: Omit<Event, 'seq'>, also: Readonly<Record<string, unknown>> = {}): Promise<Event> =>
  (await appendEvents(db, [event], also))[0] as Event;

async function putAll(tx: Write, values: Readonly<Record<string, unknown>>): Promise<void> {
  const keep = tx.objectStore('keep');
  for (const [key, value] of Object.entries(values)) {
    if (value === undefined) await keep.delete(key);
    else await keep.put(value, key);
  }
}

/** Named values, all or none; `undefined` deletes. */
export const putKept = (db: Database, values: Readonly<Record<string, unknown>>): Promise<void> =>
  db.write((tx) => putAll(tx, values));

export const getKept = <T>(db: Database, key: string): Promise<T | undefined> =>
  db.read((tx) => tx.objectStore('keep').get(key) as Promise<T | undefined>);

export interface Phone {
  events: Event[];
  kept: Kept;
  /** The highest number on this phone. */
  highest: number;
}

/**
 * Everything the phone knows, read at once so that it fits together. Of the log only what stands behind the number that `after`
 * answers, at most so many: a log of months is not read again at each call.
 */
export function readAll(db: Database, after: (kept: Kept) => number = () => 0, most?: number): Promise<Phone> {
  return db.read(async (tx) => {
    const log = tx.objectStore('events');
    const [last, kept] = await Promise.all([log.openKeyCursor(null, 'prev'), keptIn(tx)]);
    const range = IDBKeyRange.lowerBound(after(kept), true);
    return { events: await log.getAll(range, most), kept, highest: last?.key ?? 0 };
  });
}

async function keptIn(tx: Read): Promise<Kept> {
  const keep = tx.objectStore('keep');
  const keys = ['sync', 'device', 'lastReceivedAt', 'serverTime', 'persisted', 'feed', 'history', 'questions'];
  const [sync, device, lastReceivedAt, serverTime, persisted, feed, history, questions] = await Promise.all(keys.map((key) => keep.get(key)));
  return {
    sync: (sync as SyncState | undefined) ?? STARTING,
    device: (device as Device | undefined) ?? null,
    lastReceivedAt: (lastReceivedAt as string | undefined) ?? null,
    serverTime: (serverTime as string | undefined) ?? null,
    persisted: (persisted as boolean | undefined) ?? null,
    feed: (feed as Record<string, unknown> | undefined) ?? {},
    history: (history as History | undefined) ?? null,
    questions: (questions as Questions | undefined) ?? null,
  };
}

/** Whether two pairings are for the same client: by id where the practice told it, else by names. */
export const samePerson = (a: Device, b: Device): boolean =>
  a.client_id && b.client_id ? a.client_id === b.client_id : a.client_name === b.client_name && a.practice_name === b.practice_name;

/**
 * Takes a new key into use. The numbers start at nothing received, so the whole log is offered again and the practice knows
 * each entry by its id. Another person's log is set aside whole: never shown, never sent under the new name, never thrown away.
 */
export function useDevice(db: Database, device: Device, now: string): Promise<void> {
  return db.write(async (tx) => {
    const [events, keep] = [tx.objectStore('events'), tx.objectStore('keep')];
    const before = (await keep.get('device')) as Device | undefined;
    if (before && !samePerson(before, device)) {
      const [log, keys] = [await events.getAll(), await keep.getAllKeys()];
      const old = await Promise.all(keys.filter((key) => !key.startsWith('aside.')).map(async (key) => [key, await keep.get(key)] as const));
      await Promise.all([keep.put({ events: log, kept: Object.fromEntries(old) }, `aside.${now}`), events.clear(), ...old.map(([key]) => keep.delete(key))]);
    }
    const sync = (await keep.get('sync')) as SyncState | undefined;
    await Promise.all([keep.put(device, 'device'), keep.put({ ...STARTING, refused: sync?.refused ?? [] }, 'sync')]);
  });
}

/** What a reply brought, unless this phone was paired anew while it was on its way: then it speaks of other numbers. */
export function storeReply(db: Database, deviceId: string, values: Readonly<Record<string, unknown>>): Promise<void> {
  return db.write(async (tx) => {
    const device = (await tx.objectStore('keep').get('device')) as Device | undefined;
    if (device?.device_id === deviceId) await putAll(tx, values);
  });
}

/** Entries that could not be sent as they are go again with all that follows them; the practice knows those by id. */
export function offerAgain(db: Database): Promise<void> {
  return db.write(async (tx) => {
    const keep = tx.objectStore('keep');
    const sync = ((await keep.get('sync')) as SyncState | undefined) ?? STARTING;
    const unsent = sync.refused.filter(isNotSent);
    const first = Math.min(...unsent.map((item) => item.seq ?? Infinity), sync.acknowledged + 1);
    await keep.put({ ...sync, acknowledged: first - 1, refused: sync.refused.filter((item) => !isNotSent(item)) }, 'sync');
  });
}

/** The same person's phone under a number range of its own. What it has from the practice stays good. */
export function succeedDevice(db: Database, device: Device): Promise<void> {
  return db.write(async (tx) => {
    const keep = tx.objectStore('keep');
    const sync = ((await keep.get('sync')) as SyncState | undefined) ?? STARTING;
    await Promise.all([keep.put(device, 'device'), keep.put({ ...sync, acknowledged: 0 }, 'sync')]);
  });
}

/** Both stores emptied in one transaction, logs set aside included. */
export const forgetAll = (db: Database): Promise<void> =>
  db.write(async (tx) => void (await Promise.all([tx.objectStore('events').clear(), tx.objectStore('keep').clear()])));
