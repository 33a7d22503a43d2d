/** A phone: one storage, its own clock, zone and chance, and the pages that are open on it. */
import type { IDBFactory } from 'fake-indexeddb';
import { Page, turn, type Build, type Network } from './page';
import { contents, filled, type Stored } from './storage';

function notes() {
  const kept = new Map<string, string>();
  return {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, value: string) => void kept.set(name, value),
    removeItem: (name: string) => void kept.delete(name),
  };
}

export interface Setting { now: number; ahead: number; seed: number; locks: boolean; stored: Stored }

export class Phone {
  /** Time since the phone was switched on, ms: timers go by it, whatever the clock shows. */
  elapsed = 0;
  pages: Page[] = [];
  /** Opens that wait for a page to let go of the database. */
  blocked = 0;
  readonly Date: DateConstructor;
  /** The small storage that survives when the other is wiped. */
  readonly notes = notes();
  #holder: Page | null = null;
  /** What is surely on the disk; null where all of it is. */
  #flushed: Stored | null = null;
  #chance: number;
  #bytes: number[] | null = null;

  private constructor(public factory: InstanceType<typeof IDBFactory>, public now: number, public ahead: number, readonly hasLocks: boolean, seed: number) {
    this.#chance = seed;
    this.Date = dateOf(this);
  }

  static async make({ now, ahead, seed, locks, stored }: Setting): Promise<Phone> {
    return new Phone(await filled(stored), now, ahead, locks, seed);
  }

  open(build: Build, network: Network): Page {
    const page = new Page(this, build, network);
    this.pages.push(page);
    return page;
  }

  /** Also moves the clock, unless a person has set it meanwhile. */
  pass(ms: number): void {
    this.elapsed += ms;
    this.now += ms;
    for (const page of this.pages) page.fire();
  }

  /** Ends every page. */
  async off(): Promise<void> {
    for (const page of this.pages) page.die();
    await this.still();
  }

  /** The power is gone: so is what was written without being flushed. */
  async cut(): Promise<void> {
    await this.off();
    if (this.#flushed) this.factory = await filled(this.#flushed);
    this.#flushed = null;
  }

  /** Answers when no page does anything, pages that are gone included: what they held is free then. */
  async still(): Promise<void> {
    for (const page of this.pages) await page.quiet();
  }

  /** Answers when no transaction is under way: what one has done so far can be seen in the storage before it counts. */
  async committed(): Promise<void> {
    while (this.pages.some((page) => page.live.size > 0)) await turn();
  }

  contents = (): Stored => contents(this.factory);

  onTransaction(tx: IDBTransaction): void {
    if (tx.mode === 'readwrite' && tx.durability !== 'strict') this.#flushed ??= this.contents();
  }

  onFlushed(tx: IDBTransaction): void {
    if (tx.mode === 'readwrite' && tx.durability === 'strict') this.#flushed = null;
  }

  locksFor(page: Page): unknown {
    if (!this.hasLocks) return undefined;
    return {
      request: async (_name: string, _options: unknown, run: (lock: unknown) => unknown) => {
        if (this.#holder) return run(null);
        this.#holder = page;
        try {
          return await run({});
        } finally {
          this.release(page);
        }
      },
    };
  }

  release(page: Page): void {
    if (this.#holder === page) this.#holder = null;
  }

  /** The next id will be this one: its time and its bytes come round again. */
  repeat(id: string): void {
    const hex = id.replaceAll('-', '');
    this.now = parseInt(hex.slice(0, 12), 16);
    this.#bytes = (hex.match(/../g) as string[]).map((byte) => parseInt(byte, 16));
  }

  randomBytes = (bytes: Uint8Array): Uint8Array => {
    bytes.set(this.#bytes ?? Array.from(bytes, () => this.#next()));
    this.#bytes = null;
    return bytes;
  };

  #next(): number {
    // A linear congruence (Knuth's multiplier for 32 bits): the same history makes the same ids.
    this.#chance = (Math.imul(this.#chance, 1664525) + 1013904223) >>> 0;
    return this.#chance >>> 24;
  }
}

/** The phone's own Date: its clock, and the zone that its settings say, minutes ahead of UTC. */
function dateOf(phone: Phone): DateConstructor {
  return class extends Date {
    constructor(...args: [number | string] | []) {
      if (args.length === 0) super(phone.now);
      else super(args[0]);
    }
    static override now = () => phone.now;
    #there = () => new Date(this.getTime() + phone.ahead * 60_000);
    override getTimezoneOffset = () => -phone.ahead;
    override getFullYear = () => this.#there().getUTCFullYear();
    override getMonth = () => this.#there().getUTCMonth();
    override getDate = () => this.#there().getUTCDate();
    override getHours = () => this.#there().getUTCHours();
    override getMinutes = () => this.#there().getUTCMinutes();
    override getSeconds = () => this.#there().getUTCSeconds();
    override getMilliseconds = () => this.#there().getUTCMilliseconds();
  } as unknown as DateConstructor;
}
