/**
 * A phone's storage with fault points: each call that a page makes of IndexedDB is counted, its commits too, and the n-th can
 * fail, or be the last thing that the page ever does.
 */
import 'fake-indexeddb/auto';
import { IDBDatabase as Connection, IDBFactory, IDBIndex as Index, IDBObjectStore as Store } from 'fake-indexeddb';

/** `unanswered`: at a commit, it is stored and yet reported as failed, as when iOS ends the storage process. `killed`: the page is gone. */
export type How = 'UnknownError' | 'InvalidStateError' | 'QuotaExceededError' | 'unanswered' | 'killed';

/** A page, as its storage knows it. */
export interface User {
  dead: boolean;
  frozen: boolean;
  /** The fault to come: at which call from now, and how. */
  fault: { after: number; how: How } | null;
  live: Set<IDBTransaction>;
  connections: Set<IDBDatabase>;
  /** Opens under way. */
  opening: number;
  /** Another page holds the database: this open waits, and each that comes after it on this phone. */
  onBlocked(by: 1 | -1): void;
  die(): void;
  onTransaction(tx: IDBTransaction): void;
  onFlushed(tx: IDBTransaction): void;
}

interface Inner { _rollbackLog: (() => void)[]; error: DOMException | null; dispatchEvent(event: unknown): void; db: { _rawDatabase: { processTransactions(): void } } }

const users = new WeakMap<IDBDatabase, User>();
/** Handles that look alive and are not. */
const broken = new WeakSet<IDBDatabase>();

const made = (name: string) => new DOMException('made up', name);

/** Takes the fault whose turn it is. */
function due(user: User): How | null {
  if (!user.fault || --user.fault.after > 0) return null;
  const { how } = user.fault;
  user.fault = null;
  return how;
}

function point(connection: IDBDatabase): void {
  const user = users.get(connection);
  if (!user) return;
  if (user.dead || broken.has(connection)) throw made('InvalidStateError');
  const how = due(user);
  if (!how) return;
  if (how === 'killed') user.die();
  else if (how !== 'QuotaExceededError') broken.add(connection);
  throw made(how === 'killed' || how === 'unanswered' ? 'UnknownError' : how);
}

function committed(user: User, tx: IDBTransaction, event: Event): void {
  user.live.delete(tx);
  const how = user.dead ? null : due(user);
  const inner = tx as unknown as Inner;
  if (!how) return user.onFlushed(tx);
  event.stopImmediatePropagation();
  inner.db._rawDatabase.processTransactions();
  if (how === 'killed') return user.die();
  if (how !== 'unanswered') for (const undo of inner._rollbackLog.reverse()) undo();
  inner.error = made(how === 'unanswered' ? 'UnknownError' : how);
  inner.dispatchEvent(aborted());
}

/** The library's own kind of event; the DOM's cannot be dispatched on its objects. */
const aborted = () => ({
  type: 'abort', bubbles: false, cancelable: false, canceled: false, dispatched: false, initialized: true, eventPath: [], eventPhase: 0,
  CAPTURING_PHASE: 1, AT_TARGET: 2, BUBBLING_PHASE: 3, NONE: 0, propagationStopped: false, immediatePropagationStopped: false,
});

type Method = (this: unknown, ...args: unknown[]) => unknown;
function counted(prototype: object, names: string[], connectionOf: (self: never) => IDBDatabase): void {
  const methods = prototype as Record<string, Method>;
  for (const name of names) {
    const original = methods[name] as Method;
    methods[name] = function (...args) {
      point(connectionOf(this as never));
      return original.apply(this, args);
    };
  }
}
counted(Store.prototype, ['get', 'getAll', 'getAllKeys', 'put', 'add', 'delete', 'clear', 'openKeyCursor'], (self: IDBObjectStore) => self.transaction.db);
counted(Index.prototype, ['get'], (self: IDBIndex) => self.objectStore.transaction.db);
counted(Connection.prototype, ['transaction'], (self: IDBDatabase) => self);

const transaction = Connection.prototype.transaction;
Connection.prototype.transaction = function (...args) {
  const tx = transaction.apply(this, args);
  const user = users.get(this);
  if (user) {
    user.live.add(tx);
    user.onTransaction(tx);
    tx.addEventListener('complete', (event) => committed(user, tx, event));
    tx.addEventListener('abort', () => user.live.delete(tx));
  }
  return tx;
};

/** What a page calls `indexedDB`. */
export const indexedDbOf = (factory: () => IDBFactory, user: User) => ({
  open(name: string, version: number): IDBOpenDBRequest {
    const how = user.dead ? null : due(user);
    if (how === 'killed') user.die();
    else if (how) throw made(how === 'unanswered' ? 'UnknownError' : how);
    if (user.dead) return new EventTarget() as IDBOpenDBRequest; // nobody answers what is gone
    const request = factory().open(name, version);
    user.opening += 1;
    let held = false;
    const over = () => {
      user.opening -= 1;
      if (held) user.onBlocked(-1);
    };
    request.addEventListener('blocked', () => {
      held = true;
      user.onBlocked(1);
    });
    request.addEventListener('error', over);
    request.addEventListener('upgradeneeded', () => users.set(request.result, user));
    request.addEventListener('success', (event) => {
      over();
      opened(user, request.result, event);
    });
    return request;
  },
});

function opened(user: User, connection: IDBDatabase, event: Event): void {
  users.set(connection, user);
  user.connections.add(connection);
  connection.addEventListener('versionchange', (change) => user.frozen && change.stopImmediatePropagation());
  if (!user.dead) return;
  event.stopImmediatePropagation();
  connection.close();
}

/** What is in a phone's storage; `version` 0 where nothing ever was. */
export interface Stored { version: number; events: unknown[]; keep: [string, unknown][] }

interface Raw { version: number; rawObjectStores: Map<string, { records: { values(): Iterable<{ key: unknown; value: unknown }> } }> }
const NAME = 'steadfoot';

/** Reads at once, without a transaction: what one has done that is under way is seen, too. */
export function contents(factory: IDBFactory): Stored {
  const raw = (factory as unknown as { _databases: Map<string, Raw> })._databases.get(NAME);
  const records = (store: string) => [...(raw?.rawObjectStores.get(store)?.records.values() ?? [])];
  return {
    version: raw?.version ?? 0,
    events: records('events').map(({ value }) => structuredClone(value)),
    keep: records('keep').map(({ key, value }) => [key as string, structuredClone(value)]),
  };
}

/** A storage with these contents. */
export async function filled({ version, events, keep }: Stored): Promise<IDBFactory> {
  const factory = new IDBFactory();
  if (version === 0) return factory;
  const request = factory.open(NAME, version);
  await new Promise((resolve, reject) => {
    request.onerror = reject;
    request.onsuccess = resolve;
    request.onupgradeneeded = () => {
      const log = request.result.createObjectStore('events', { keyPath: 'seq' });
      log.createIndex('id', 'id', { unique: true });
      const named = request.result.createObjectStore('keep');
      for (const event of events) log.put(event);
      for (const [key, value] of keep) named.put(value, key);
    };
  });
  request.result.close();
  return factory;
}
