/**
 * Keeps drawings on the phone, so that a card shows them without a network: those of the program first, then the rest of the
 * library, while nothing waits to be sent and the network does not charge by the amount.
 */
import { computed, effect } from '@preact/signals';
import { olderPrograms, program, waitingSince, type Program } from '../../outbox';
import { drawingUrl, drawnAs, isOwnDrawing } from '../../shared/drawing';
import type { components } from '../../generated/api';
import { DRAWINGS } from '../../sw/drawings';
import { keptDrawings } from './kept';
import { findExercise, rungsAround } from './library';

/** House: how long a list of the library's drawings is believed, ms. */
const LIST_FRESH_MS = 3600 * 1000;
const ADDRESS = 'Drawing-Address';
const VERSION = 'Drawing-Version';
/** By address: the version, and whether the practice has it at hand. */
export type Listed = ReadonlyMap<string, { version: string; ready: boolean }>;

/** Addresses of the prescribed variants and of the rungs beside them. */
export function programDrawings(programs: readonly Pick<Program, 'content' | 'exercises'>[]): string[] {
  const found = new Set<string>();
  for (const { content, exercises } of programs) {
    const prescribed = content.sessions.flatMap((session) => (session.kind === 'circuit' ? session.prescriptions : []));
    for (const { exercise, variant } of prescribed.flatMap((one) => [one, ...(one.alternatives ?? [])])) {
      const entry = findExercise(exercises, exercise);
      const { easier, now, harder } = rungsAround(entry, variant);
      // A program from before the library was drawn says nothing of drawings; a practice's own movement says it truly.
      for (const rung of [now, easier, harder]) if (entry && rung && (rung.drawn || !entry.own)) found.add(drawingUrl(drawnAs(entry), rung.variant, 'moving'));
    }
  }
  return [...found];
}

interface Held { version: string; bytes: number }

async function heldIn(cache: Cache): Promise<Map<string, Held>> {
  const all = (await cache.matchAll()).map(({ headers }) => headers);
  return new Map(all.filter((one) => one.has(ADDRESS)).map((one) => [one.get(ADDRESS)!, { version: one.get(VERSION) ?? '', bytes: Number(one.get('Content-Length')) }]));
}

/** A sign-in page of a hut's network answers 200 as well. */
const isA = (type: string, answer: Response) => answer.ok && (answer.headers.get('Content-Type') ?? '').startsWith(type);

async function fetchOne(address: string, version: string, cache: Cache, ask: typeof fetch): Promise<void> {
  const answer = await ask(address, { cache: 'no-cache', credentials: 'omit', priority: 'low' });
  if (!isA('image/svg+xml', answer)) return;
  const body = await answer.blob();
  const headers = { 'Content-Type': 'image/svg+xml', 'Content-Length': String(body.size), [ADDRESS]: address, [VERSION]: version };
  await cache.put(address, new Response(body, { headers }));
}

/** Removes what is in neither list. Without the library's list nothing is known to be superfluous. */
async function evict(first: readonly string[], listed: Listed, cache: Cache): Promise<void> {
  for (const { url } of await cache.keys()) {
    const { pathname, search } = new URL(url);
    if (!first.includes(pathname + search) && !listed.has(pathname + search)) await cache.delete(url);
  }
}

/**
 * Brings the program's drawings, then what is ready of the library's as long as `mayGoOn`; one call at a time, since it shares the link with
 * check-ins, and only what is missing or was drawn anew. Broken off at any moment, the next call goes on from there.
 * Answers whether it came to the end.
 */
export async function keepDrawings(
  first: readonly string[], listed: Listed | null, cache: Cache, ask: typeof fetch, mayGoOn: () => boolean,
): Promise<boolean> {
  const held = await heldIn(cache);
  const missing = (address: string) => (listed?.has(address) ? held.get(address)?.version !== listed.get(address)!.version : !held.has(address));
  if (listed) await evict(first, listed, cache);
  const known = first.filter((address) => !listed || listed.has(address) || isOwnDrawing(address));
  for (const address of known.filter(missing)) await fetchOne(address, listed?.get(address)?.version ?? '', cache, ask);
  for (const [address, { version, ready }] of listed ?? []) {
    if (!ready || known.includes(address) || !missing(address)) continue;
    if (!mayGoOn()) return false;
    await fetchOne(address, version, cache, ask);
  }
  return true;
}

export async function fetchList(ask: typeof fetch): Promise<Listed | null> {
  const answer = await ask('/api/v1/drawings', { cache: 'no-cache', credentials: 'omit', priority: 'low' });
  if (!isA('application/json', answer)) return null;
  const { items } = (await answer.json()) as components['schemas']['DrawingsOut'];
  return new Map(items.map(({ exercise, variant, version, ready }) => [drawingUrl(exercise, variant, 'moving'), { version, ready }]));
}

export interface Link { saveData?: boolean; type?: string; effectiveType?: string }
const link = (globalThis.navigator as { connection?: Link & EventTarget } | undefined)?.connection;

/** Whether the network may be used without asking. A browser that does not tell counts as yes: the whole library is less than one photograph. */
export const isFree = (way: Link | undefined): boolean =>
  !way?.saveData && !['cellular', 'bluetooth', 'wimax'].includes(way?.type ?? '') && !(way?.effectiveType ?? '').endsWith('2g');

const nothingWaits = computed(() => waitingSince.value === null);
const mayGoOn = () => nothingWaits.value && isFree(link);

let listed: Listed | null = null;
let listedAt = 0;

async function list(): Promise<Listed | null> {
  if (Date.now() - listedAt < LIST_FRESH_MS) return listed;
  listed = (await fetchList(fetch).catch(() => null)) ?? listed;
  if (listed) listedAt = Date.now();
  return listed;
}

/** Without a cache or a network the cards work as they are; the next occasion tries again. Answers whether there is more to bring. */
async function keep(): Promise<boolean> {
  if (!('caches' in globalThis)) return false;
  const first = programDrawings(program.value ? [program.value, ...olderPrograms.value] : []);
  try {
    if (!program.value) await caches.delete(DRAWINGS);
    const cache = await caches.open(DRAWINGS);
    const whole = !program.value || (await keepDrawings(first, await list(), cache, fetch, mayGoOn).finally(() => count(cache)));
    return !whole;
  } catch {
    return true; // no network, no room or no storage
  }
}

async function count(cache: Cache): Promise<void> {
  const held = [...(await heldIn(cache)).values()];
  keptDrawings.value = { count: held.length, bytes: held.reduce((sum, { bytes }) => sum + bytes, 0), of: listed?.size ?? null };
}

/** Call once after the first drawing of the page. */
export function watchDrawings(): void {
  let last = Promise.resolve(true);
  const next = () => void (last = last.then(keep));
  const goOn = () => void (last = last.then((more) => (more && mayGoOn() ? keep() : more)));
  let known: string | null | undefined;
  let due = false;
  effect(() => {
    const id = program.value?.id ?? null;
    if (id === known) return; // a sync that brought something else
    known = id;
    next();
  });
  effect(() => {
    if (!nothingWaits.value) return;
    if (due) next();
    else goOn();
    due = false;
  });
  // Check-ins that waited for this network have the link to themselves first.
  addEventListener('online', () => (nothingWaits.value ? next() : (due = true)));
  link?.addEventListener('change', goOn);
}
