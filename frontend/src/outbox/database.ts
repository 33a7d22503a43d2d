/**
 * The phone's one database. Two stores: `events`, the log, and `keep`, named values.
 * A write counts only when its transaction fired `complete`, opened with strict durability: power may be lost a second later.
 */
import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction } from 'idb';
import type { Event } from './events';

export interface Schema extends DBSchema {
  events: { key: number; value: Event; indexes: { id: string } };
  keep: { key: string; value: unknown };
}
type Stores = ('events' | 'keep')[];
export type Write = IDBPTransaction<Schema, Stores, 'readwrite'>;
export type Read = IDBPTransaction<Schema, Stores, 'readonly'>;

const NAME = 'steadfoot';
const VERSION = 1;
/** How long the database may take to open before we try anew, ms. */
export const OPEN_WITHIN_MS = 5_000;
/** How long another page of an older build may hold it before we say so, ms. */
export const BLOCKED_AFTER_MS = 1_500;

/** The write did not reach the phone's storage. Nothing was changed; the page keeps what was entered and says "not saved". */
export class NotSaved extends Error {
  override name = 'NotSaved';
}
/** As NotSaved, because the phone has no room left. */
export class PhoneFull extends NotSaved {
  override name = 'PhoneFull';
}
/** Another page of an older build holds the database; it goes on by itself when that page is closed. */
export class Blocked extends NotSaved {
  override name = 'Blocked';
}

const isQuota = (error: unknown): boolean => (error as { name?: string } | null)?.name === 'QuotaExceededError';

function asNotSaved(error: unknown): NotSaved {
  if (error instanceof NotSaved) return error;
  return isQuota(error) ? new PhoneFull('no room left', { cause: error }) : new NotSaved('storage failed', { cause: error });
}

interface Opening {
  db: Promise<IDBPDatabase<Schema>>;
  isBlocked: boolean;
}

export class Database {
  #opening: Opening | null = null;

  /** `onOutdated`: a newer build wants the database. `onFree`: another page held it, which was said, and has let go. */
  constructor(private readonly onOutdated: () => void = () => undefined, private readonly onFree: () => void = () => undefined) {}

  /** Runs `work` in one transaction and answers when it is `complete`. A dead connection is replaced and the work tried once more. */
  async write<T>(work: (tx: Write) => Promise<T>): Promise<T> {
    return this.#twice(async (db) => finish(db.transaction(['events', 'keep'], 'readwrite', { durability: 'strict' }), work));
  }

  async read<T>(work: (tx: Read) => Promise<T>): Promise<T> {
    return this.#twice(async (db) => finish(db.transaction(['events', 'keep'], 'readonly'), work));
  }

  async #twice<T>(attempt: (db: IDBPDatabase<Schema>) => Promise<T>): Promise<T> {
    try {
      return await attempt(await this.#connection());
    } catch (error) {
      if (isQuota(error) || error instanceof Blocked) throw asNotSaved(error);
      this.close(); // the handle may be dead though it looks alive: the second try must not use it again
    }
    try {
      return await attempt(await this.#connection());
    } catch (error) {
      this.close();
      throw asNotSaved(error);
    }
  }

  #connection(): Promise<IDBPDatabase<Schema>> {
    const opening = (this.#opening ??= this.#open());
    return new Promise((resolve, reject) => {
      // Some browsers leave an open request unanswered for ever; a tap must not hang on it.
      const late = setTimeout(() => reject(new NotSaved('the database does not open')), OPEN_WITHIN_MS);
      const held = setTimeout(() => opening.isBlocked && reject(new Blocked('another page holds the database')), BLOCKED_AFTER_MS);
      opening.db.then(resolve, reject).finally(() => [late, held].forEach(clearTimeout));
    });
  }

  #open(): Opening {
    const opening: Opening = { isBlocked: false, db: this.#request(() => (opening.isBlocked = true)) };
    // A blocked request stays in force: a second one would only stand behind it.
    opening.db.then(() => opening.isBlocked && this.onFree(), () => this.#opening === opening && (this.#opening = null));
    return opening;
  }

  #request(blocked: () => void): Promise<IDBPDatabase<Schema>> {
    return openDB<Schema>(NAME, VERSION, {
      upgrade: (db, from) => {
        if (from >= 1) return;
        db.createObjectStore('events', { keyPath: 'seq' }).createIndex('id', 'id', { unique: true });
        db.createObjectStore('keep');
      },
      blocked,
      blocking: () => {
        this.close();
        this.onOutdated();
      },
      terminated: () => this.close(),
    });
  }

  /** Drops the connection; the next call opens a new one. */
  close(): void {
    const old = this.#opening;
    this.#opening = null;
    old?.db.then((db) => db.close()).catch(() => undefined);
  }

  /** A real write, read and delete: a browser may offer storage and refuse to use it. Throws NotSaved. */
  async probe(): Promise<void> {
    await this.write(async (tx) => {
      const keep = tx.objectStore('keep');
      await keep.put(1, 'probe');
      if ((await keep.get('probe')) !== 1) throw new NotSaved('storage does not keep what it is given');
      await keep.delete('probe');
    });
  }
}

interface Finishing {
  done: Promise<void>;
  error: DOMException | null;
  abort(): void;
}

async function finish<X extends Finishing, T>(tx: X, work: (tx: X) => Promise<T>): Promise<T> {
  // Handled below; without this a transaction that dies before it is awaited is reported as unhandled.
  tx.done.catch(() => undefined);
  try {
    const result = await work(tx);
    await tx.done;
    return result;
  } catch (error) {
    // A full phone shows at the commit: the request then says only "aborted", the transaction says why.
    const reason = tx.error ?? error;
    abortQuietly(tx);
    throw reason;
  }
}

function abortQuietly(tx: Finishing): void {
  try {
    tx.abort();
  } catch {
    // already over
  }
}
