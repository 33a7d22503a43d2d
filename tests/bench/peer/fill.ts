/** The phone's own outbox, for a page of the measurement: writes check-ins as the app does, many in one go. */
import { Database } from '../../../frontend/src/outbox/database';
import type { Event } from '../../../frontend/src/outbox/events';
import { appendEvents, readAll } from '../../../frontend/src/outbox/log';

const db = new Database();
Object.assign(globalThis, {
  fillOutbox: async (fresh: Omit<Event, 'seq'>[]) => (await appendEvents(db, fresh)).length,
  acknowledged: async () => (await readAll(db)).kept.sync.acknowledged,
});
