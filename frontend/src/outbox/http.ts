/** The phone's calls to the practice. Nothing here decides anything; see sync.ts and sender.ts. */
import type { Device } from './log';
import type { Event } from './events';
import { readHistory, type Told } from './history';
import { readQuestions, type Question } from './questions';
import { readReply, retryAfter, type Reply } from './sync';

/** A call that takes longer is given up and tried again with less, ms. */
export const CALL_TIMEOUT_MS = 30_000;
/** Smaller bodies are sent as they are, bytes. */
const GZIP_FROM_BYTES = 4 * 1024;

export type Outcome =
  | { kind: 'reply'; reply: Reply }
  | { kind: 'revoked' }
  | { kind: 'erased' }
  | { kind: 'waiting' }
  /** Too much at once. With a `code` the practice itself says that it cannot read this as it is, however often it comes. */
  | { kind: 'smaller'; code: string | null }
  /** The practice itself failed over it. One entry may be the cause, or the practice fails over everything. */
  | { kind: 'fault' }
  | { kind: 'later'; retryAfterMs: number };

export type Fetch = (input: string, init: RequestInit) => Promise<Response>;

async function packed(text: string): Promise<{ body: BodyInit; headers: Record<string, string> }> {
  const bytes = new TextEncoder().encode(text);
  if (bytes.length <= GZIP_FROM_BYTES || typeof CompressionStream === 'undefined') return { body: text, headers: {} };
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream('gzip'));
  return { body: await new Response(stream).arrayBuffer(), headers: { 'Content-Encoding': 'gzip' } };
}

const call = (fetch: Fetch, path: string, token: string | null, headers: Record<string, string>, init: RequestInit): Promise<Response> =>
  fetch(`/api/v1${path}`, {
    ...init,
    headers: { ...headers, Accept: 'application/json', ...(token && { Authorization: `Bearer ${token}` }) },
    cache: 'no-store',
    credentials: 'omit',
    redirect: 'error', // a network's sign-in page is no answer
    signal: AbortSignal.timeout(CALL_TIMEOUT_MS),
  });

async function post(fetch: Fetch, path: string, token: string | null, value: unknown): Promise<Response> {
  const { body, headers } = await packed(JSON.stringify(value));
  return call(fetch, path, token, { ...headers, 'Content-Type': 'application/json' }, { method: 'POST', body });
}

/** The `code` of a problem+json body; null when the answer is not ours. */
async function problemCode(response: Response): Promise<string | null> {
  try {
    const value = JSON.parse(await response.text()) as { code?: unknown; type?: unknown };
    if (typeof value.code === 'string') return value.code;
    return typeof value.type === 'string' ? (value.type.split('/').pop() ?? null) : null;
  } catch {
    return null;
  }
}

const wire = ({ seq, id, kind, recorded_at, body }: Event) => ({ seq, id, kind, recorded_at, body });

/** One sync call. Never throws: no network, a timeout and a strange answer are outcomes too. */
export async function callSync(fetch: Fetch, token: string, cursor: number, events: readonly Event[], nowMs: number): Promise<Outcome> {
  try {
    const response = await post(fetch, '/sync', token, { cursor, events: events.map(wire) });
    return await outcomeOf(response, nowMs);
  } catch (error) {
    return (error as { name?: string }).name === 'TimeoutError' ? { kind: 'smaller', code: null } : { kind: 'later', retryAfterMs: 0 };
  }
}

async function outcomeOf(response: Response, nowMs: number): Promise<Outcome> {
  const later: Outcome = { kind: 'later', retryAfterMs: retryAfter(response.headers.get('Retry-After'), nowMs) };
  if (response.ok) {
    const reply = readReply(response.headers.get('Content-Type'), await response.text());
    return reply ? { kind: 'reply', reply } : later;
  }
  if (response.status === 413) return { kind: 'smaller', code: 'too-large' };
  if (![400, 401, 403, 422, 500].includes(response.status)) return later;
  // Only the practice's own words count: a network's sign-in page may answer so as well.
  const code = await problemCode(response);
  if (response.status === 500) return code === 'internal' ? { kind: 'fault' } : later;
  if (response.status === 400 || response.status === 422) return code === null ? later : { kind: 'smaller', code };
  if (code === 'pairing-not-confirmed') return { kind: 'waiting' };
  if (response.status !== 401 || code === null) return later;
  return { kind: code === 'record-erased' ? 'erased' : 'revoked' };
}

async function get<T>(fetch: Fetch, path: string, token: string, read: (text: string) => T | null): Promise<T | null> {
  try {
    const response = await call(fetch, path, token, {}, { method: 'GET' });
    return response.ok ? read(await response.text()) : null;
  } catch {
    return null;
  }
}

/** What earlier phones of this client have said. Null when it could not be had now. */
export const callHistory = (fetch: Fetch, token: string): Promise<Told | null> => get(fetch, '/history', token, readHistory);

/** The health questions of the practice. Null when they could not be had now. */
export const callQuestions = (fetch: Fetch, token: string): Promise<Question[] | null> => get(fetch, '/screening/questions', token, readQuestions);

/** New numbers for a phone whose numbers another one uses too. Null when it could not be had now. */
export async function callSuccessor(fetch: Fetch, device: Device): Promise<Device | null> {
  try {
    const response = await post(fetch, '/devices/current/successors', device.token, {});
    if (!response.ok) return null;
    const value = JSON.parse(await response.text()) as Partial<Device>;
    return typeof value.device_id === 'string' && typeof value.token === 'string'
      ? { ...device, device_id: value.device_id, token: value.token }
      : null;
  } catch {
    return null;
  }
}

/** Why pairing did not work: the code is wrong, used or too old; too many tries; or the practice could not be reached. */
export class PairingFailed extends Error {
  override name = 'PairingFailed';
  constructor(readonly reason: 'code' | 'too_many' | 'unreachable', readonly detail: string | null = null) {
    super(reason);
  }
}

export async function callPairing(fetch: Fetch, code: string, label: string): Promise<Device> {
  let response: Response;
  try {
    response = await post(fetch, '/pairings', null, { code, label });
  } catch {
    throw new PairingFailed('unreachable');
  }
  if (response.status === 429) throw new PairingFailed('too_many');
  const text = await response.text();
  if (response.ok) return deviceFrom(text);
  const ours = response.headers.get('Content-Type')?.includes('json') && response.status < 500;
  throw new PairingFailed(ours ? 'code' : 'unreachable');
}

function deviceFrom(text: string): Device {
  try {
    const value = JSON.parse(text) as Partial<Device>;
    if (typeof value.token === 'string' && typeof value.device_id === 'string') {
      return { ...(value as Device), client_id: value.client_id ?? null };
    }
  } catch {
    // not ours, see below
  }
  throw new PairingFailed('unreachable');
}
