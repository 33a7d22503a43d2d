/** A page of the phone app: the real outbox, loaded anew into surroundings of its own. The network is a question to the conductor. */
import type * as Outbox from '../../index';
import { indexedDbOf, type How, type User } from './storage';
import type { Phone } from './phone';

export type Build = (...surroundings: unknown[]) => typeof Outbox;
/** What the page asks of the network; the answer comes by `answer`. */
export interface Call { path: string; method: string; headers: Record<string, string>; body: string }
export interface Answer { status?: number; headers?: Record<string, string>; text?: string; error?: 'TypeError' | 'TimeoutError' }
export type Network = (page: Page, call: Call) => Promise<Answer>;

export const SURROUNDINGS = [
  'indexedDB', 'fetch', 'navigator', 'document', 'addEventListener', 'setTimeout', 'clearTimeout', 'Date', 'crypto', 'AbortSignal',
  'CompressionStream', 'localStorage', 'location',
] as const;

/** Lets everything that is ready run once. */
export const turn = () => new Promise<void>((resolve) => setImmediate(resolve));
/** Nothing happened for so many turns of the loop: nothing will. */
const QUIET_TURNS = 4;

export class Page implements User {
  dead = false;
  frozen = false;
  fault: { after: number; how: How } | null = null;
  live = new Set<IDBTransaction>();
  connections = new Set<IDBDatabase>();
  opening = 0;
  calling = 0;
  readonly outbox: typeof Outbox;
  readonly gone: Promise<never>;
  #timers = new Map<number, { at: number; run: () => void }>();
  #lastTimer = 0;
  #end: (why: Error) => void = () => undefined;
  #listening: (() => void)[] = [];

  constructor(readonly phone: Phone, build: Build, private readonly network: Network) {
    this.gone = new Promise((_, reject) => (this.#end = reject));
    this.gone.catch(() => undefined);
    this.outbox = build(
      indexedDbOf(() => phone.factory, this), this.#fetch, { locks: phone.locksFor(this) }, { addEventListener() {}, visibilityState: 'visible' },
      () => undefined, this.#setTimeout, (id: number) => void this.#timers.delete(id), phone.Date,
      { getRandomValues: phone.randomBytes }, { timeout: () => null }, undefined,
      phone.notes, { reload: () => void this.outbox.start() },
    );
  }

  /** Ends it as a phone ends an app: what is not committed is undone, and nothing of it ever runs again. */
  die(): void {
    if (this.dead) return;
    this.dead = true;
    for (const tx of this.live) abort(tx);
    for (const connection of this.connections) connection.close();
    this.#timers.clear();
    this.phone.release(this);
    this.#end(new Error('killed'));
    this.#heard();
  }

  onTransaction = (tx: IDBTransaction): void => this.phone.onTransaction(tx);
  onBlocked = (by: 1 | -1): void => void (this.phone.blocked += by);
  onFlushed = (tx: IDBTransaction): void => this.phone.onFlushed(tx);

  #fetch = async (path: string, init: RequestInit): Promise<unknown> => {
    if (this.dead) return new Promise(() => undefined);
    this.calling += 1;
    const answer = await this.network(this, {
      path, method: init.method ?? 'GET', headers: init.headers as Record<string, string>, body: (init.body as string | undefined) ?? '',
    });
    this.calling -= 1;
    this.#heard();
    if (this.dead) return new Promise(() => undefined);
    if (answer.error === 'TimeoutError') throw new DOMException('too slow', 'TimeoutError');
    if (answer.error) throw new TypeError('no network');
    const headers = new Map(Object.entries(answer.headers ?? {}).map(([name, value]) => [name.toLowerCase(), value]));
    const status = answer.status as number;
    return { status, ok: status >= 200 && status < 300, headers: { get: (name: string) => headers.get(name.toLowerCase()) ?? null }, text: async () => answer.text ?? '' };
  };

  #setTimeout = (run: () => void, ms: number): number => {
    this.#timers.set(++this.#lastTimer, { at: this.phone.elapsed + ms, run });
    return this.#lastTimer;
  };

  /** Runs the timers whose time has come. */
  fire(): void {
    for (const [id, timer] of [...this.#timers].sort(([, a], [, b]) => a.at - b.at)) {
      if (this.dead || timer.at > this.phone.elapsed) continue;
      this.#timers.delete(id);
      timer.run();
    }
  }

  /** Answers when the page waits for nothing but timers. */
  async quiet(): Promise<void> {
    for (let still = 0; still < QUIET_TURNS; still += 1) {
      await turn();
      const isCalling = this.calling > 0 && !this.dead;
      if (isCalling) await new Promise<void>((resolve) => this.#listening.push(resolve)); // the practice needs the processor meanwhile
      if (isCalling || this.live.size > 0 || (this.opening > 0 && !this.phone.blocked)) still = -1;
    }
  }

  #heard(): void {
    for (const go of this.#listening.splice(0)) go();
  }
}

function abort(tx: IDBTransaction): void {
  try {
    tx.abort();
  } catch {
    // committed already
  }
}
