/**
 * Sends the log when it can. One flush at a time; correctness never depends on that, since the practice knows each entry by
 * its id. There is no background sending on many phones, so a flush is tried at each occasion the page has.
 */
import type { Database } from './database';
import type { Event } from './events';
import { applyChanges, NO_FEED, type Feed } from './feed';
import { callSuccessor, callSync, type Fetch, type Outcome } from './http';
import { readAll, storeReply, succeedDevice, type Device, type Phone } from './log';
import { applyReply, backoff, BATCH_EVENTS, halved, nextBatch, standIn, type Reply } from './sync';

export type Connection = 'unpaired' | 'waiting' | 'revoked' | 'erased' | 'ready' | 'unreachable';

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

/** House: so many failures in a row are an outage; then the practice may be failing over one entry, and the others go past it. */
const OUTAGE_TRIES = 3;
/** House: who fails over so many entries fails over everything. */
const MOST_PASSED_BY = 3;

const MOST_BEGINS = 4;

/** One flush, from its first call to its last. */
interface Round {
  /** The next batch begins behind this number; null: behind what is acknowledged. */
  after: number | null;
  /** Why the next entry goes as a stand-in; null: it goes as it is. */
  unfit: string | null;
  passedBy: number;
  begins: number;
}

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
    while (this.#wanted) {
      this.#wanted = false;
      this.#clear();
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
    const round: Round = { after: null, unfit: null, passedBy: 0, begins: 0 };
    while (round.begins < MOST_BEGINS) {
      const found = await readAll(this.db, ({ sync }) => round.after ?? sync.acknowledged, this.#limit);
      const { device, sync } = found.kept;
      if (!device) return this.#say('unpaired', Infinity);
      const batch = this.#batchOf(found, round);
      if (round.after !== null && batch.length === 0) break;
      const outcome = await callSync(this.around.fetch, device.token, sync.cursor, batch, this.around.now());
      if (outcome.kind !== 'reply') {
        if (!this.#goesOn(outcome, batch, round)) return this.#failed(outcome);
      } else if (!(await this.#take(found, device, batch, outcome.reply, round))) {
        return this.#failed({ kind: 'later', retryAfterMs: 0 });
      }
    }
    this.#limit = BATCH_EVENTS;
    if (round.passedBy > 0) return this.#failed({ kind: 'fault' });
    this.#failures = 0;
    return this.#say('ready', quiet);
  }

  #batchOf({ events, kept }: Phone, { after, unfit }: Round): Event[] {
    const next = nextBatch(events, after ?? kept.sync.acknowledged, this.#limit);
    return unfit === null ? next : next.slice(0, 1).map((event) => standIn(event, unfit));
  }

  /** After a call that was not taken: with less, with a stand-in, or past one entry. False: later. */
  #goesOn(outcome: Outcome, batch: readonly Event[], round: Round): boolean {
    const isStuck = outcome.kind === 'fault' && this.#failures >= OUTAGE_TRIES && round.passedBy < MOST_PASSED_BY;
    const first = batch[0];
    if (!first || (outcome.kind !== 'smaller' && !isStuck)) return false;
    if (batch.length > 1) {
      this.#limit = halved(batch.length);
      return true;
    }
    if (isStuck) {
      round.after = first.seq; // it is tried again each time; what stands behind it is safe at the practice meanwhile
      round.passedBy += 1;
    } else {
      const code = outcome.kind === 'smaller' && round.unfit === null ? outcome.code : null;
      if (code === null) return false;
      round.unfit = code; // this one will never be taken as it is: it must not hold up the others
    }
    this.#limit = isStuck ? BATCH_EVENTS : 1;
    return true;
  }

  /** False when new numbers were needed and could not be had. */
  async #take(found: Phone, device: Device, batch: readonly Event[], reply: Reply, round: Round): Promise<boolean> {
    const { sync, feed } = found.kept;
    const applied = applyReply(sync, batch, found.highest, reply);
    await this.#store(applied, device, feed as unknown as Partial<Feed>, reply);
    if (applied.needsSuccessor && !(await this.#succeed(device))) return false;
    if (round.unfit !== null) this.#limit = BATCH_EVENTS;
    round.unfit = null;
    // A reply may ask to begin again (restored practice, new numbers). Bounded: a server that always asks must not hold us.
    const again = applied.needsSuccessor || applied.again;
    if (again) round.begins += 1;
    round.after = again ? null : Math.max(applied.state.acknowledged, batch.at(-1)?.seq ?? 0);
    return true;
  }

  async #store(applied: ReturnType<typeof applyReply>, device: Device, feed: Partial<Feed>, reply: Reply): Promise<void> {
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
    if (outcome.kind === 'revoked' || outcome.kind === 'erased') return this.#say(outcome.kind, Infinity);
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
