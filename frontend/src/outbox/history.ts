/**
 * What earlier phones of the same client have said, as the practice tells it to a new phone. It lies under this phone's own
 * entries and is never counted among them: nothing of it is saved or sent here.
 */
import type { LocalDate } from '../shared/dates';
import type { Database } from './database';
import { foldSessions, type SessionState } from './fold';
import { callHistory, type Fetch } from './http';
import { readAll, storeReply } from './log';

export interface History {
  /** The pairing it was told to: a new pairing asks again. */
  device_id: string;
  /** The practice told all it knows from this day on. */
  since: LocalDate;
  items: SessionState[];
}
export type Told = Pick<History, 'since' | 'items'>;

type Item = Omit<SessionState, 'sets_done'> & { sets: SessionState['sets_done'] };

const isItem = (value: unknown): value is Item => {
  const item = value as Partial<Item> | null;
  const lists = Array.isArray(item?.sets) && Array.isArray(item.left_out);
  return typeof item?.planned_id === 'string' && lists && typeof item.swaps === 'object' && item.swaps !== null;
};

const stateOf = ({ planned_id, program_version, sets, left_out, swaps, minutes, effort, finished, walk }: Item): SessionState => ({
  planned_id, program_version, sets_done: sets, left_out, swaps, minutes, effort, finished, walk,
});

/** The answer, if it is one: a hotel's sign-in page says nothing of what was trained. */
export function readHistory(text: string): Told | null {
  try {
    const value = JSON.parse(text) as { since?: unknown; items?: unknown } | null;
    if (typeof value?.since !== 'string' || !Array.isArray(value.items) || !value.items.every(isItem)) return null;
    return { since: value.since, items: value.items.map(stateOf) };
  } catch {
    return null;
  }
}

/**
 * The part that this phone's own entries do not say already: the rest of it stays this phone's, to be taken back here too.
 * Pure; `own` by planned id.
 */
export function notSaidHere(items: readonly SessionState[], own: ReadonlyMap<string, SessionState>): SessionState[] {
  return items.map((item) => without(item, own.get(item.planned_id))).filter(saysAnything);
}

const saysAnything = (item: SessionState): boolean =>
  item.sets_done.length > 0 || item.left_out.length > 0 || item.finished || Object.keys(item.swaps).length > 0;

function without(item: SessionState, own: SessionState | undefined): SessionState {
  if (!own) return item;
  const said = new Set([...own.sets_done, ...own.left_out].map(([key, round]) => `${round}/${key}`));
  const isNew = ([key, round]: readonly [string, number, ...unknown[]]) => !said.has(`${round}/${key}`);
  const answers = own.finished ? { minutes: null, effort: null, finished: false, walk: null } : {};
  return {
    ...item, ...answers,
    sets_done: item.sets_done.filter(isNew), left_out: item.left_out.filter(isNew),
    swaps: Object.fromEntries(Object.entries(item.swaps).filter(([key]) => !(key in own.swaps))),
  };
}

/** Asks once a pairing, and again while it has never been answered. Call it when everything is sent. Answers whether something is new. */
export async function takeHistory(db: Database, fetch: Fetch): Promise<boolean> {
  const { events, kept } = await readAll(db);
  const { device, history } = kept;
  if (!device || history?.device_id === device.device_id) return false;
  const told = await callHistory(fetch, device.token);
  if (!told) return false;
  const own = new Map(foldSessions(events).map((state) => [state.planned_id, state]));
  const fresh: History = { device_id: device.device_id, since: told.since, items: notSaidHere(told.items, own) };
  await storeReply(db, device.device_id, { history: fresh });
  return true;
}
