/**
 * Sends the log when it can. One flush at a time; correctness never depends on that, since the practice knows each entry by
 * its id. There is no background sending on many phones, so a flush is tried at each occasion the page has.
 */
import type { Database } from './database';
import type { Event } from './events';
import { applyChanges, NO_FEED, type Feed } from './feed';
import { callSuccessor, callSync, type Fetch, type Outcome } from './http';
import { readAll, storeReply, succeedDevice, type Device } from './log';
import { applyReply, backoff, BATCH_EVENTS, halved, nextBatch, standIn, type Applied, type Reply } from './sync';

export type Connection = 'unpaired' | 'waiting' | 'revoked' | 'ready' | 'unreachable';

export interface Surroundings {
  fetch: Fetch;
  now: () => number;
  /** 0 to 1. */
  random: () => number;
  setTimer: (run: () => void, ms: number) => unknown;
  clearTimer: (timer: never) => void;
  /** Runs `flush` unless another page of this phone is at it. */
  alone: (flush: () => Promise<void>) => Promise<void>;
}
export interface Listener {
  /** Something was stored: read it again. */
  onStored: () => Promise<void>;
  onConnection: (connection: Connection) => void;
}

/** While a practitioner has yet to compare the check number, ms. */
export const WAITING_POLL_MS = 10_000;
/** While the page is open and nothing is wrong: news from the practice, ms; spread over half to one and a half of it. */
export const QUIET_POLL_MS = 5 * 60_000;
/** When another page of this phone is sending: it may have read the log before our last entry, ms. */
export const OTHER_PAGE_MS = 10_000;

export class Sender {
  #timer: unknown = null;
  #failures = 0;
  #limit = BATCH_EVENTS;
  #running: Promise<void> | null = null;
  #wanted = false;
  #visible = true;

  constructor(private readonly db: Database, private readonly around: Surroundings, private readonly listener: Listener) {}

  /** An occasion to send: start, visible, online, a new entry. Waiting for a later try ends here. */
  kick(): Promise<void> {
    this.#wanted = true;
    this.#running ??= this.#run().finally(() => (this.#running = null));
    return this.#running;
  }

  /** Timers run only while the page can be seen. */
  setVisible(visible: boolean): void {
    this.#visible = visible;
    if (!visible) this.#clear();
    else void this.kick();
  }

  async #run(): Promise<void> {
    this.#clear();
    while (this.#wanted) {
      this.#wanted = false;
      let wait = OTHER_PAGE_MS;
      await this.around.alone(async () => {
        wait = await this.#flush(QUIET_POLL_MS * (0.5 + this.around.random()));
      });
      this.#wakeIn(wait);
    }
  }

  #clear(): void {
    if (this.#timer !== null) this.around.clearTimer(this.#timer as never);
    this.#timer = null;
  }

  #wakeIn(ms: number): void {
    this.#clear();
    if (this.#visible && ms < Infinity) this.#timer = this.around.setTimer(() => void this.kick(), ms);
  }

  /** Sends all there is; answers how long to wait, ms. A storage failure is a reason to come again, never to stop. */
  async #flush(quiet: number): Promise<number> {
    try {
      return await this.#sendAll(quiet);
    } catch {
      this.#failures += 1;
      return backoff(this.#failures, this.around.random());
    }
  }

  async #sendAll(quiet: number): Promise<number> {
    // A reply may ask to begin again (restored practice, new numbers). Bounded: a server that always asks must not hold us.
    let after: number | null = null;
    let unfit: string | null = null;
    for (let begins = 0; begins < 4; ) {
      const from = after;
      const { events, kept, highest } = await readAll(this.db, ({ sync }) => from ?? sync.acknowledged, this.#limit);
      const { device } = kept;
      if (!device) return this.#say('unpaired', Infinity);
      const next = nextBatch(events, after ?? kept.sync.acknowledged, this.#limit);
      if (after !== null && next.length === 0) break;
      const batch: Event[] = unfit === null ? next : next.slice(0, 1).map((event) => standIn(event, unfit as string));
      const outcome = await callSync(this.around.fetch, device.token, kept.sync.cursor, batch, this.around.now());
      if (outcome.kind === 'smaller' && batch.length > 1) {
        this.#limit = halved(batch.length);
        continue;
      }
      if (outcome.kind === 'smaller' && batch.length === 1 && unfit === null && outcome.code !== null) {
        unfit = outcome.code; // this one alone will never be taken: it must not hold up the others
        continue;
      }
      if (unfit !== null) this.#limit = BATCH_EVENTS;
      unfit = null;
      if (outcome.kind !== 'reply') return this.#failed(outcome);
      const applied = applyReply(kept.sync, batch, highest, outcome.reply);
      await this.#store(applied, device, kept.feed as unknown as Partial<Feed>, outcome.reply);
      if (applied.needsSuccessor && !(await this.#succeed(device))) return this.#failed({ kind: 'later', retryAfterMs: 0 });
      const again = applied.needsSuccessor || applied.again;
      if (again) begins += 1;
      after = again ? null : Math.max(applied.state.acknowledged, batch.at(-1)?.seq ?? 0);
    }
    this.#failures = 0;
    this.#limit = BATCH_EVENTS;
    return this.#say('ready', quiet);
  }

  async #store(applied: Applied, device: Device, feed: Partial<Feed>, reply: Reply): Promise<void> {
    await storeReply(this.db, device.device_id, {
      device: { ...device, status: 'active' },
      sync: applied.state,
      ...(applied.changes.length > 0 && { feed: applyChanges({ ...NO_FEED, ...feed }, applied.changes) }),
      lastReceivedAt: new Date(this.around.now()).toISOString(),
      serverTime: reply.server_time,
    });
    await this.listener.onStored();
  }

  async #succeed(device: Device): Promise<boolean> {
    const fresh = await callSuccessor(this.around.fetch, device);
    if (!fresh) return false;
    await succeedDevice(this.db, fresh);
    await this.listener.onStored();
    return true;
  }

  #failed(outcome: Exclude<Outcome, { kind: 'reply' }>): number {
    if (outcome.kind === 'revoked') return this.#say('revoked', Infinity);
    if (outcome.kind === 'waiting') return this.#say('waiting', WAITING_POLL_MS * (0.5 + this.around.random()));
    this.#failures += 1;
    const atLeast = outcome.kind === 'later' ? outcome.retryAfterMs : 0;
    return this.#say('unreachable', backoff(this.#failures, this.around.random(), atLeast));
  }

  #say(connection: Connection, wait: number): number {
    this.listener.onConnection(connection);
    return wait;
  }
}
