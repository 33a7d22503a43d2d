/** How far one planned session has come, and which of its sets is next. */
import type { SessionState } from '../../outbox/fold';
import { setCount, type PlannedSession, type Prescription, type Session } from '../../shared/program';

/** What the phone's own entries say of one planned session (see outbox/fold), with sets by key. */
export interface Progress {
  /** Set keys, see `setKey`. */
  done: ReadonlySet<string>;
  /** Set key to reason. */
  left_out: ReadonlyMap<string, string>;
  /** Prescription key to the variant taken instead, or `exercise/variant` of another movement, for this session only. */
  swaps: Readonly<Record<string, string>>;
  minutes: number | null;
  effort: number | null;
  finished: boolean;
  program_version: number | null;
}
export const NOTHING: Progress = {
  done: new Set(), left_out: new Map(), swaps: {}, minutes: null, effort: null, finished: false, program_version: null,
};

export interface SetPlace {
  key: string;
  prescription: Prescription;
  /** 1 for the first. */
  round: number;
  /** Place in the whole session, 0 for the first. */
  index: number;
}

export const setKey = (prescription: string, round: number): string => `${prescription}/${round}`;

/** Every set of a circuit in the order it is done; nothing for other kinds. */
export function setsOf(session: Session): SetPlace[] {
  if (session.kind !== 'circuit') return [];
  const { prescriptions, rounds } = session;
  return Array.from({ length: rounds }, (_, r) =>
    prescriptions.map((prescription, i) => ({
      key: setKey(prescription.key, r + 1), prescription, round: r + 1, index: r * prescriptions.length + i,
    })),
  ).flat();
}

export function progressOf(state: SessionState): Progress {
  return {
    ...state,
    done: new Set(state.sets_done.map(([key, round]) => setKey(key, round))),
    left_out: new Map(state.left_out.map(([key, round, reason]) => [setKey(key, round), reason])),
  };
}

export const isSettled = (progress: Progress, key: string): boolean => progress.done.has(key) || progress.left_out.has(key);
export const nextSet = (session: Session, progress: Progress): SetPlace | null =>
  setsOf(session).find((set) => !isSettled(progress, set.key)) ?? null;

/** The first set after this one that is still open; then any earlier one; null when none is. */
export function setAfter(session: Session, progress: Progress, key: string): SetPlace | null {
  const sets = setsOf(session);
  const at = sets.findIndex((set) => set.key === key);
  return [...sets.slice(at + 1), ...sets.slice(0, at)].find((set) => !isSettled(progress, set.key)) ?? null;
}

export const laidCount = (session: Session, progress: Progress): number =>
  session.kind === 'circuit' ? setsOf(session).filter((set) => progress.done.has(set.key)).length : Number(progress.finished);

export type Standing = 'done' | 'partly' | 'left_out' | 'none';

/** By what was laid: done only when every set is; left out when every set was left out on purpose. */
export function standing(session: Session, progress: Progress): Standing {
  const laid = laidCount(session, progress);
  if (laid >= setCount(session)) return 'done';
  if (laid > 0) return 'partly';
  const sets = setsOf(session);
  if (sets.length > 0 && sets.every((set) => progress.left_out.has(set.key))) return 'left_out';
  return progress.finished ? 'partly' : 'none';
}

/** Nothing more is asked of it: finished by the person, or a walk or cardio that was entered. */
export const isClosed = (planned: PlannedSession, progress: Progress): boolean =>
  progress.finished || standing(planned.session, progress) === 'left_out';
