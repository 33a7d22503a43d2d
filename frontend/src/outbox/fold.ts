/**
 * From the set of events to what a page shows of a planned session. Pure; the order of arrival plays no part, and an event
 * that comes twice counts once. Same rules as on the server; tests/vectors/fold.json holds both to them.
 */
import { dayWritten, type LocalDate } from '../shared/dates';
import type { Event } from './events';

export interface WalkFacts { distance_km: number; ascent_m: number; descent_m: number; minutes: number; pack_kg: number }
export interface SessionState {
  /** `YYYY-MM-DD.N`, or `extra.YYYY-MM-DD` for what was done outside the plan that day. */
  planned_id: string;
  program_version: number | null;
  sets_done: [prescription: string, round: number][];
  left_out: [prescription: string, round: number, reason: string][];
  /** Prescription key to the variant done instead, for this session only; `exercise/variant` of another movement. */
  swaps: Record<string, string>;
  minutes: number | null;
  effort: number | null;
  finished: boolean;
  walk: WalkFacts | null;
}

interface Draft {
  version: number | null;
  sets: Map<string, { prescription: string; round: number; reason: string | null }>;
  swaps: Map<string, string>;
  minutes: number | null;
  effort: number | null;
  finished: boolean;
  walk: WalkFacts | null;
}
type Body = Record<string, unknown>;
type Step = (draft: Draft, body: Body) => void;

const setKey = (body: Body) => `${String(body.round)}/${String(body.prescription)}`;
const mark = (reason: string | null): Step => (draft, body) =>
  void draft.sets.set(setKey(body), { prescription: String(body.prescription), round: Number(body.round), reason });

/** Of another movement it is `exercise/variant`: codes have no slash. */
const swapped = ({ to_variant, exercise }: Body) => (exercise == null ? String(to_variant) : `${String(exercise)}/${String(to_variant)}`);

const STEPS: Partial<Record<string, Step>> = {
  session_started: () => undefined,
  set_ticked: mark(null),
  set_unticked: (draft, body) => void draft.sets.delete(setKey(body)),
  set_left_out: (draft, body) => mark(String(body.reason))(draft, body),
  variant_swapped: (draft, body) => void draft.swaps.set(String(body.prescription), swapped(body)),
  session_finished: (draft, body) => {
    draft.finished = true;
    draft.minutes = Number(body.minutes);
    draft.effort = Number(body.effort);
  },
  walk_logged: (draft, body) => {
    draft.finished = true;
    draft.walk = {
      distance_km: Number(body.distance_km), ascent_m: Number(body.ascent_m), descent_m: Number(body.descent_m),
      minutes: Number(body.minutes), pack_kg: Number(body.pack_kg),
    };
    draft.minutes = Number(body.minutes);
    if (body.effort != null) draft.effort = Number(body.effort);
  },
};

/** The calendar day an event is about: `body.day`, else the day written in `recorded_at` with its own offset. */
export const dayOf = (event: Event): LocalDate => (event.body.day as string | undefined) ?? dayWritten(event.recorded_at);

function keyOf(event: Event): string {
  return (event.body.planned_id as string | undefined) ?? `extra.${dayOf(event)}`;
}

const compare = <T extends string | number>(a: T, b: T) => (a < b ? -1 : a > b ? 1 : 0);

/** Reading a time costs more than comparing two: each once. An event never changes. */
const instants = new WeakMap<Event, number>();
function instantOf(event: Event): number {
  let at = instants.get(event);
  if (at === undefined) instants.set(event, (at = Date.parse(event.recorded_at)));
  return at;
}

/** (instant, number, id): what puts two events about the same thing in order, whenever they arrive. */
export function inOrder(a: Event, b: Event): number {
  return compare(instantOf(a), instantOf(b)) || compare(a.seq, b.seq) || compare(a.id, b.id);
}

/** Each event once, without those taken back, in order. */
export function standing(events: readonly Event[]): Event[] {
  const byId = new Map<string, Event>();
  for (const event of events) {
    const there = byId.get(event.id);
    if (!there || inOrder(event, there) < 0) byId.set(event.id, event);
  }
  const withdrawn = new Set([...byId.values()].map((event) => event.kind === 'entry_withdrawn' && event.body.event_id));
  return [...byId.values()].filter((event) => !withdrawn.has(event.id)).sort(inOrder);
}

/** Every planned session of which something was said, by `planned_id`: this phone's entries over what `earlier` phones said. */
export function foldSessions(events: readonly Event[], earlier: readonly SessionState[] = []): SessionState[] {
  const before = new Map(earlier.map((state) => [state.planned_id, state]));
  const byKey = new Map<string, Event[]>(earlier.map((state) => [state.planned_id, []]));
  for (const event of standing(events)) {
    if (!STEPS[event.kind]) continue;
    const key = keyOf(event);
    const own = byKey.get(key);
    if (own) own.push(event);
    else byKey.set(key, [event]);
  }
  return [...byKey].map(([key, own]) => foldOne(key, own, draftFrom(before.get(key)))).sort((a, b) => compare(a.planned_id, b.planned_id));
}

/** What is known before the first entry: nothing, or what an earlier phone said. */
function draftFrom(known?: SessionState): Draft {
  const marks = [
    ...(known?.sets_done ?? []).map(([prescription, round]) => ({ prescription, round, reason: null })),
    ...(known?.left_out ?? []).map(([prescription, round, reason]) => ({ prescription, round, reason })),
  ];
  return {
    version: known?.program_version ?? null, sets: new Map(marks.map((set) => [setKey(set), set])), swaps: new Map(Object.entries(known?.swaps ?? {})),
    minutes: known?.minutes ?? null, effort: known?.effort ?? null, finished: known?.finished ?? false, walk: known?.walk ?? null,
  };
}

function foldOne(plannedId: string, events: readonly Event[], draft: Draft): SessionState {
  for (const event of events) {
    STEPS[event.kind]?.(draft, event.body);
    const version = event.body.program_version as number | undefined;
    if (version !== undefined) draft.version = Math.max(draft.version ?? 0, version);
  }
  return finished(plannedId, draft);
}

function finished(planned_id: string, draft: Draft): SessionState {
  const sets = [...draft.sets.values()].sort((a, b) => compare(a.prescription, b.prescription) || a.round - b.round);
  return {
    planned_id,
    program_version: draft.version,
    sets_done: sets.filter((set) => set.reason === null).map((set) => [set.prescription, set.round]),
    left_out: sets.flatMap((set) => (set.reason === null ? [] : [[set.prescription, set.round, set.reason] as [string, number, string]])),
    swaps: Object.fromEntries([...draft.swaps].sort(([a], [b]) => compare(a, b))),
    minutes: draft.minutes, effort: draft.effort, finished: draft.finished, walk: draft.walk,
  };
}

/** Pain reports that stand, newest last. */
export const foldPain = (events: readonly Event[]): Event[] => standing(events).filter((event) => event.kind === 'pain_reported');
