/** A practice in memory that follows the sync contract, with switches for everything that can go wrong on the way. */
import type { Event } from '../events';
import type { Fetch } from '../http';
import type { Change, RefusedItem } from '../sync';

interface Held { numbers: Map<number, string> }
type Trouble = (path: string, init: RequestInit) => Response | 'lost-request' | 'lost-reply' | null;

export class FakePractice {
  epoch = 'epoch-1';
  stored = new Map<string, Event>();
  devices = new Map<string, Held>([['token-1', { numbers: new Map() }]]);
  refuse = new Map<string, string>();
  changes: Change[] = [];
  calls: { path: string; seqs: number[]; cursor: number; gzip: boolean }[] = [];
  trouble: Trouble = () => null;
  maxEvents = Infinity;
  /** What a call that carries this entry as it is gets for an answer. */
  poison = new Map<string, Response>();

  fetch: Fetch = async (path, init) => {
    const made = this.trouble(path, init);
    if (made === 'lost-request') throw new TypeError('no network');
    if (made instanceof Response) return made;
    const reply = await this.answer(path, init);
    if (made === 'lost-reply') throw new TypeError('connection reset');
    return reply;
  };

  private async answer(path: string, init: RequestInit): Promise<Response> {
    const headers = new Headers(init.headers);
    const token = headers.get('Authorization')?.slice(7) ?? '';
    if (!this.devices.has(token)) return problem(401, 'device-revoked');
    if (path.endsWith('/successors')) return this.succeed(token);
    const gzip = headers.get('Content-Encoding') === 'gzip';
    const body = JSON.parse(await text(init.body, gzip)) as { cursor: number; events: Event[] };
    this.calls.push({ path, seqs: body.events.map((event) => event.seq), cursor: body.cursor, gzip });
    if (body.events.length > this.maxEvents) return problem(413, 'too-large');
    const poisoned = body.events.find((event) => this.poison.has(event.id) && !('not_sent' in event.body));
    if (poisoned) return this.poison.get(poisoned.id)!.clone();
    return this.take(token, body);
  }

  private succeed(old: string): Response {
    const token = `${old}+`;
    this.devices.set(token, { numbers: new Map() });
    return json({ device_id: `device-${token}`, token }, 201);
  }

  private take(token: string, { cursor, events }: { cursor: number; events: Event[] }): Response {
    const { numbers } = this.devices.get(token) as Held;
    const refused: RefusedItem[] = [];
    for (const event of events) {
      const code = (numbers.get(event.seq) ?? event.id) !== event.id ? 'number-taken' : 'not_sent' in event.body ? 'not-sent' : this.refuse.get(event.id);
      if (code) refused.push({ id: event.id, seq: event.seq, problem: { code } });
      else if (!this.stored.has(event.id)) this.stored.set(event.id, event);
      if (!numbers.has(event.seq)) numbers.set(event.seq, event.id);
    }
    let through = 0;
    while (numbers.has(through + 1)) through += 1;
    const head = this.changes.at(-1)?.number ?? 0;
    const from = cursor > head ? 0 : cursor;
    const changes = this.changes.filter((change) => change.number > from);
    return json({
      server_epoch: this.epoch, server_time: '2026-11-25T10:00:00+00:00', acknowledged_through: through, refused, changes,
      cursor: changes.at(-1)?.number ?? from,
    });
  }
}

async function text(body: BodyInit | null | undefined, gzip: boolean): Promise<string> {
  const plain = new Response(body ?? '');
  if (!gzip) return plain.text();
  return new Response(plain.body!.pipeThrough(new DecompressionStream('gzip'))).text();
}

export const json = (value: unknown, status = 200): Response =>
  new Response(JSON.stringify(value), { status, headers: { 'Content-Type': 'application/json' } });
export const problem = (status: number, code: string, headers: Record<string, string> = {}): Response =>
  new Response(JSON.stringify({ code, status }), { status, headers: { 'Content-Type': 'application/problem+json', ...headers } });
