/** A phone for tests: a fresh in-memory database, a sender with hand-wound timers, and short ways to log. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { Database } from '../database';
import type { Event } from '../events';
import { appendEvent, readAll, useDevice, type Device } from '../log';
import { Sender, type Connection } from '../sender';
import { uuid7 } from '../uuid7';
import type { FakePractice } from './server';

export const DEVICE: Device = {
  device_id: 'device-1', token: 'token-1', client_id: 'client-1', client_name: 'Emil', practice_name: 'Thornwater',
  practitioner_name: 'Maren', pairing_id: 'pairing-1', status: 'active', check_number: '1234',
};

export function freshStorage(): void {
  globalThis.indexedDB = new IDBFactory();
}

export const entry = (n: number): Omit<Event, 'seq'> => ({
  id: uuid7(1_764_000_000_000 + n, (bytes) => bytes.fill(n % 256)),
  kind: 'set_ticked',
  recorded_at: '2026-11-25T10:00:00.000+00:00',
  body: { planned_id: '2026-11-25.1', prescription: 'p1', round: n },
});

export class Phone {
  db = new Database();
  timers: { run: () => void; ms: number }[] = [];
  connections: Connection[] = [];
  locked = false;
  sender: Sender;

  constructor(practice: FakePractice, private random = 0.5) {
    this.sender = new Sender(
      this.db,
      {
        fetch: practice.fetch,
        now: () => Date.parse('2026-11-25T10:00:00Z'),
        random: () => this.random,
        setTimer: (run, ms) => {
          this.timers = [{ run, ms }];
          return 1;
        },
        clearTimer: () => (this.timers = []),
        alone: async (flush) => {
          if (!this.locked) await flush();
        },
      },
      { onStored: async () => undefined, onConnection: (now) => this.connections.push(now) },
    );
  }

  pair = (device: Device = DEVICE) => useDevice(this.db, device, '2026-11-25T10:00:00Z');
  async log(from: number, to = from): Promise<void> {
    for (let n = from; n <= to; n += 1) await appendEvent(this.db, entry(n));
  }
  send = () => this.sender.kick();
  state = () => readAll(this.db);
  acknowledged = async () => (await this.state()).kept.sync.acknowledged;
}
