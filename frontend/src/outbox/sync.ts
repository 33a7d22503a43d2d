/** What to send and what a reply means. Pure: no clock, no storage, no network. */
import type { Event } from './events';

/** As many as the practice takes in one call. */
export const BATCH_EVENTS = 500;
export const BATCH_BYTES = 256 * 1024;

export interface RefusedItem {
  id: string;
  seq: number | null;
  problem: { code?: string; detail?: string };
}
export interface SyncState {
  /** Number of the last change taken from the practice. */
  cursor: number;
  /** The server's epoch; it changes when a database was restored. */
  epoch: string | null;
  /** The practice holds every event up to this number. */
  acknowledged: number;
  /** Received, not understood, kept by the practice for a person to read. */
  refused: RefusedItem[];
}
export const STARTING: SyncState = { cursor: 0, epoch: null, acknowledged: 0, refused: [] };

export interface Change {
  number: number;
  kind: string;
  at: string;
  body: Record<string, unknown>;
}
export interface Reply {
  server_epoch: string;
  server_time: string;
  acknowledged_through: number;
  refused: RefusedItem[];
  changes: Change[];
  cursor: number;
}

/** The reply, if it is one. A hotel's sign-in page, an empty object or a number as text acknowledges nothing. */
export function readReply(contentType: string | null, text: string): Reply | null {
  if (!contentType?.toLowerCase().includes('json')) return null;
  try {
    const value = JSON.parse(text) as Partial<Reply> | null;
    return value && looksRight(value) ? (value as Reply) : null;
  } catch {
    return null;
  }
}

function looksRight(value: Partial<Reply>): boolean {
  const counts = [value.acknowledged_through, value.cursor].every((n) => Number.isInteger(n) && (n as number) >= 0);
  return counts && typeof value.server_epoch === 'string' && Array.isArray(value.refused) && Array.isArray(value.changes);
}

const bytesOf = (event: Event): number => new TextEncoder().encode(JSON.stringify(event)).length + 1;

/** The next events after `after`, in order: at most `limit` and 256 kB, but always one if there is one. */
export function nextBatch(events: readonly Event[], after: number, limit: number = BATCH_EVENTS): Event[] {
  const batch: Event[] = [];
  let bytes = 0;
  for (const event of events) {
    if (event.seq <= after) continue;
    bytes += bytesOf(event);
    if (batch.length > 0 && (batch.length >= limit || bytes > BATCH_BYTES)) break;
    batch.push(event);
  }
  return batch;
}

/**
 * In the place of an entry that cannot be sent as it is: the practice keeps it aside and goes on behind it, the phone keeps
 * the entry. Same id and number, so that the entry itself is still taken when it can be.
 */
export const standIn = (event: Event, code: string): Event => ({ ...event, body: { not_sent: code, bytes: bytesOf(event) } });

/** After a batch that was too large or too slow. */
export const halved = (limit: number): number => Math.max(1, Math.floor(limit / 2));

export interface Applied {
  state: SyncState;
  changes: Change[];
  /** These numbers belong to another phone too (a copied profile): numbers of one's own are needed. */
  needsSuccessor: boolean;
  /** The practice went back to an older backup, or asks to be read from the beginning: call again at once. */
  again: boolean;
}

/** The practice has only a stand-in for it; the entry itself is on this phone alone. */
export const isNotSent = (item: RefusedItem): boolean => item.problem?.code === 'not-sent';

const isNumberTaken = (item: RefusedItem): boolean => item.problem?.code?.replace('_', '-') === 'number-taken';

/** What a reply to `sent` means; `highest` is the highest number on this phone when it was sent. */
export function applyReply(state: SyncState, sent: readonly Event[], highest: number, reply: Reply): Applied {
  const restored = state.epoch !== null && state.epoch !== reply.server_epoch;
  const needsSuccessor = reply.acknowledged_through > highest || reply.refused.some(isNumberTaken);
  // Numbers not sent in this call or known before are not believed: a copy of this phone may have used them.
  const known = Math.max(state.acknowledged, sent.at(-1)?.seq ?? 0);
  const acknowledged = needsSuccessor ? state.acknowledged : Math.min(reply.acknowledged_through, known);
  const refused = mergeRefused(state.refused, sent, reply.refused.filter((item) => !isNumberTaken(item)));
  return {
    state: { cursor: restored ? 0 : reply.cursor, epoch: reply.server_epoch, acknowledged, refused },
    changes: reply.changes,
    needsSuccessor,
    again: restored || acknowledged < state.acknowledged,
  };
}

/** What was sent again and is not refused again has been taken. */
function mergeRefused(before: readonly RefusedItem[], sent: readonly Event[], fresh: readonly RefusedItem[]): RefusedItem[] {
  const again = new Set(sent.map((event) => event.id));
  const byId = new Map(before.filter((item) => !again.has(item.id)).map((item) => [item.id, item]));
  for (const item of fresh) byId.set(item.id, item);
  return [...byId.values()];
}

const FIRST_DELAY_MS = 1_000;
export const LONGEST_DELAY_MS = 15 * 60_000;

/** Wait before try number `failures` + 1: doubling from 1 s to 15 min with full jitter, never sooner than the server asked. */
export function backoff(failures: number, random: number, retryAfterMs = 0): number {
  const ceiling = Math.min(LONGEST_DELAY_MS, FIRST_DELAY_MS * 2 ** Math.min(failures - 1, 30));
  return Math.max(retryAfterMs, Math.round(ceiling * random));
}

/** Retry-After in ms: seconds or an HTTP date. */
export function retryAfter(header: string | null, nowMs: number): number {
  if (!header) return 0;
  const ms = /^\d+$/.test(header.trim()) ? Number(header) * 1000 : Date.parse(header) - nowMs;
  return Number.isFinite(ms) ? Math.min(Math.max(ms, 0), LONGEST_DELAY_MS) : 0;
}
