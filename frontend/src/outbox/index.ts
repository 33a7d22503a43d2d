/** The phone's outbox as the pages use it: signals to read, and few calls. Pages never talk to the network or the database. */
import { computed, effect, signal } from '@preact/signals';
import { recordedAt } from '../shared/dates';
import { browserSurroundings, noteLeft, readLeft, watchOccasions, type Left } from './browser';
import { Blocked, Database, NotSaved, PhoneFull } from './database';
import type { Bodies, Event, EventKind } from './events';
import { NO_FEED, type Feed } from './feed';
import { foldPain, foldSessions, type SessionState } from './fold';
import { takeHistory, type History } from './history';
import { callPairing, PairingFailed } from './http';
import { appendEvents, forgetAll, getKept, offerAgain, putKept, readAll, samePerson, useDevice, type Device, type Kept } from './log';
import { takeQuestions, type Question } from './questions';
import { Sender, type Connection } from './sender';
import { isNotSent, type RefusedItem } from './sync';
import { normalizeCode } from './code';
import { uuid7 } from './uuid7';

export { Blocked, NotSaved, PairingFailed, PhoneFull, samePerson };
export { groupCode, normalizeCode, takeCodeFromAddress } from './code';
export type { Question } from './questions';
export type { Bodies, Device, Event, EventKind, RefusedItem, SessionState, Connection };
export type { Feed, FlagAnswer, LibraryExercise, LibraryVariant, Message, Practice, Program, Settings } from './feed';

/** Whether the phone's storage works: null until it was tried. Without it nothing may be called saved. */
export const storage = signal<null | 'works' | 'refused' | 'blocked' | 'full'>(null);
/** True once another page of a newer build wants the database: this page must be loaded again. */
export const outdated = signal(false);
/** All events on this phone, by number. */
export const events = signal<readonly Event[]>([]);
export const device = signal<Device | null>(null);
export const connection = signal<Connection>('unpaired');
/** The practice holds every event up to this number. */
export const acknowledged = signal(0);
/** When the practice last answered, RFC 3339; null if it never did. */
export const lastReceivedAt = signal<string | null>(null);
const aside = signal<readonly RefusedItem[]>([]);
/** Received but not understood; the practice keeps them for a person. */
export const refused = computed(() => aside.value.filter((item) => !isNotSent(item)));
/** Could not be sent as they are: on this phone only, and the practice knows that they are missing. */
export const unsendable = computed(() => aside.value.filter(isNotSent));
/** What this phone had was cleared from it; null when it was not, or was never there. */
export const gone = signal<Left | null>(null);
/** The same moment on two clocks, RFC 3339, when they are further apart than CLOCK_OFF_MS; else null. */
export const clocks = signal<{ phone: string; practice: string } | null>(null);
/** House: less than this is no trouble to anybody, ms. */
const CLOCK_OFF_MS = 5 * 60_000;
/** What the browser said to "keep this safe": null until asked. */
export const persisted = signal<boolean | null>(null);

const feed = signal<Feed>(NO_FEED);
export const practice = computed(() => feed.value.practice);
export const settings = computed(() => feed.value.settings);
export const program = computed(() => feed.value.program);
export const trip = computed(() => feed.value.trip ?? null);
export const olderPrograms = computed(() => feed.value.olderPrograms);
export const messages = computed(() => feed.value.messages);
export const answers = computed(() => feed.value.answers);

/** How many entries are on this phone, how many of them the practice holds, and since when something waits. */
export const savedCount = computed(() => events.value.length);
export const receivedCount = computed(() => events.value.filter(isReceived).length);
export const waitingSince = computed(() => events.value.find((event) => event.seq > acknowledged.value)?.recorded_at ?? null);
const missing = computed(() => new Set(unsendable.value.map((item) => item.id)));
export const isReceived = (event: Event): boolean => event.seq <= acknowledged.value && !missing.value.has(event.id);
/** The health questions in the order they are asked; empty until they have come. */
export const questions = signal<readonly Question[]>([]);
const history = signal<History | null>(null);
/** What earlier phones of this client said that this one did not, by `planned_id`. */
export const earlier = computed(() => new Map((history.value?.items ?? []).map((state) => [state.planned_id, state])));
/** From this day on the practice told all that earlier phones said; null while it has not. */
export const earlierSince = computed(() => history.value?.since ?? null);
/** What is known of each planned session, by `planned_id`: this phone's own entries over what earlier phones said. */
export const sessions = computed(
  () => new Map(foldSessions(events.value, [...earlier.value.values()]).map((state) => [state.planned_id, state])),
);
export const painReports = computed(() => foldPain(events.value));

// Nothing was shown but that another page holds the database: to begin again is to go on.
const db = new Database(() => (outdated.value = true), () => location.reload());
const sender = new Sender(db, browserSurroundings(), {
  onStored: load,
  onConnection: (now) => {
    connection.value = now;
    if (now === 'ready') void askOnce();
  },
});

/** A failure is no trouble: the next occasion asks again, and until then only this phone's own entries are shown. */
let asking = false;
async function askOnce(): Promise<void> {
  if (asking) return;
  asking = true;
  for (const take of [takeHistory, takeQuestions]) {
    if (await take(db, (url, init) => fetch(url, init)).catch(() => false)) await load().catch(() => undefined);
  }
  asking = false;
}

/** Counts what this page wrote, so that a slower read cannot hide a newer entry. */
let written = 0;

/** This page has every entry up to here; 0 when another page wrote in between. */
function knownThrough(): number {
  const last = events.value.at(-1)?.seq ?? 0;
  return last === events.value.length ? last : 0;
}

/** The log was emptied behind our back. */
function reload(): Promise<void> {
  events.value = [];
  return load();
}

async function load(): Promise<void> {
  const before = written;
  const known = knownThrough();
  const isSame = (kept: Kept) => kept.device?.device_id === device.value?.device_id;
  const { events: fresh, kept, highest } = await readAll(db, (found) => (isSame(found) ? known : 0));
  if (written !== before) return load();
  if (!isSame(kept) || known === 0) events.value = fresh;
  else if (highest < known) return reload();
  else if (fresh.length > 0) events.value = [...events.value, ...fresh];
  device.value = kept.device;
  acknowledged.value = kept.sync.acknowledged;
  aside.value = kept.sync.refused;
  lastReceivedAt.value = kept.lastReceivedAt;
  clocks.value = apart(kept.lastReceivedAt, kept.serverTime);
  persisted.value = kept.persisted;
  history.value = kept.history;
  questions.value = kept.questions?.items ?? [];
  feed.value = { ...NO_FEED, ...(kept.feed as Partial<Feed>) };
}

const apart = (phone: string | null, practice: string | null) =>
  phone && practice && Math.abs(Date.parse(phone) - Date.parse(practice)) > CLOCK_OFF_MS ? { phone, practice } : null;

effect(() => {
  if (device.value) noteLeft({ practice: device.value.practice_name, unsent: savedCount.value - receivedCount.value });
});

/** Call once. Reads what is on the phone, tries the storage, then sends in the background. Never throws, never waits for a network. */
export async function start(): Promise<void> {
  try {
    await db.probe();
    storage.value = 'works';
    await load();
    if (!device.value) gone.value = readLeft();
    if (device.value) connection.value = device.value.status === 'active' ? 'ready' : 'waiting';
  } catch (error) {
    storage.value = error instanceof PhoneFull ? 'full' : error instanceof Blocked ? 'blocked' : 'refused';
    if (storage.value === 'full') await load().catch(() => undefined); // it can still be read
  }
  watchOccasions(sender, load);
  void sender.kick();
}

/**
 * Records one check-in. Resolves only when it is safely on the phone, with the event; throws NotSaved or PhoneFull, and then
 * nothing was stored. `also` are named values (see drafts) stored in the same transaction; `undefined` deletes one.
 */
export async function record<K extends EventKind>(kind: K, body: Bodies[K], also: Readonly<Record<string, unknown>> = {}): Promise<Event> {
  return (await recordAll([{ kind, body } as Entry], also))[0] as Event;
}

export type Entry = { [K in EventKind]: { kind: K; body: Bodies[K] } }[EventKind];
/** Sending reads the whole log: it waits until what was tapped is drawn, ms. */
const SEND_AFTER_MS = 100;

/** As `record`, several check-ins at once, in this order: all of them or none. */
export async function recordAll(entries: readonly Entry[], also: Readonly<Record<string, unknown>> = {}): Promise<Event[]> {
  const now = Date.now();
  const fresh = entries.map(({ kind, body }, n) => {
    const at = new Date(now + n); // a millisecond apart: a list by time shows them in the order in which they were said
    return { id: uuid7(at.getTime()), kind, recorded_at: recordedAt(at), body: { ...body } as Record<string, unknown> };
  });
  const stored = await appendEvents(db, fresh, also);
  const numbers = new Set(stored.map((event) => event.seq));
  written += 1;
  events.value = [...events.value.filter((event) => !numbers.has(event.seq)), ...stored];
  storage.value = 'works';
  setTimeout(() => void sender.kick(), SEND_AFTER_MS);
  return stored;
}

/** Try now; a person asked. */
export const sendNow = (): Promise<void> => sender.kick();

/** Entries that could not be sent as they are, once more: the practice may have been mended. Throws NotSaved. */
export async function tryAgain(): Promise<void> {
  await offerAgain(db);
  await load();
  await sender.kick();
}

/**
 * Asks the practice with the code as typed, pasted or scanned: who is it, and for whom. The code is spent by it, so the answer
 * must be kept (see drafts) until the person has said yes. Throws PairingFailed or NotSaved.
 */
export async function askPairing(typed: string, label = ''): Promise<Device> {
  const code = normalizeCode(typed);
  if (!code) throw new PairingFailed('code');
  await db.probe(); // a code works once: it must not be spent on a phone that cannot keep the answer
  return callPairing((url, init) => fetch(url, init), code, label);
}

/** The person's yes: from now on this phone belongs to the answer's client. Throws NotSaved. */
export async function acceptPairing(fresh: Device): Promise<void> {
  await useDevice(db, fresh, new Date().toISOString());
  await load();
  gone.value = null;
  connection.value = fresh.status === 'active' ? 'ready' : 'waiting';
  await askToPersist();
  void sender.kick();
}

/** Everything off this phone: entries, program, drafts and the key. What was not received is lost. Throws NotSaved. */
export async function removeAll(): Promise<void> {
  await forgetAll(db);
  await load();
  noteLeft(null);
  connection.value = 'unpaired';
}

/** Asks the browser never to clear this by itself; the answer is kept and shown. */
export async function askToPersist(): Promise<void> {
  const answer = (await navigator.storage?.persist?.().catch(() => false)) ?? false;
  persisted.value = answer;
  await putKept(db, { persisted: answer }).catch(() => undefined);
}

/** A half-filled form, kept at each change: the app may be closed at any moment. Names are the page's own. */
export const saveDraft = (name: string, value: unknown): Promise<void> => putKept(db, { [draftKey(name)]: value });
export const loadDraft = <T>(name: string): Promise<T | undefined> => getKept<T>(db, draftKey(name));
export const clearDraft = (name: string): Promise<void> => putKept(db, { [draftKey(name)]: undefined });
/** The name to use in `record`'s `also`, to clear or change a draft in the same transaction. */
export const draftKey = (name: string): string => `draft.${name}`;

/** Everything on this phone as text, for the person to keep: also when the practice has unpaired it. Holds no key. */
export async function exportText(): Promise<string> {
  const { events: log, kept } = await readAll(db);
  const { device: _key, ...rest } = kept;
  return JSON.stringify({ exported_at: new Date().toISOString(), events: log, ...rest }, null, 2);
}
