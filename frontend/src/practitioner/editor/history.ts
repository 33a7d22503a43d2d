/** Undo and redo over immutable values: nothing is ever taken apart, each step keeps the whole content of before. */
export interface History<T> {
  past: readonly T[];
  present: T;
  future: readonly T[];
  /** The field being typed in: further typing in it belongs to the same step. */
  open: string | null;
}
/** Steps kept; a content is a few kilobytes and shares what did not change. */
export const STEPS_MAX = 500;

export const begin = <T>(present: T): History<T> => ({ past: [], present, future: [], open: null });

/** A new step; with the same `field` as the one before, that step is carried on. */
export function apply<T>(history: History<T>, next: T, field: string | null = null): History<T> {
  if (next === history.present) return history;
  const carriedOn = field !== null && field === history.open;
  const past = carriedOn ? history.past : [...history.past, history.present].slice(-STEPS_MAX);
  return { past, present: next, future: [], open: field };
}

/** Typing is over: the next edit is a step of its own. */
export const settle = <T>(history: History<T>): History<T> => (history.open === null ? history : { ...history, open: null });

export function undo<T>(history: History<T>): History<T> {
  if (history.past.length === 0) return history;
  const present = history.past.at(-1) as T;
  return { past: history.past.slice(0, -1), present, future: [history.present, ...history.future], open: null };
}

export function redo<T>(history: History<T>): History<T> {
  if (history.future.length === 0) return history;
  const [present, ...future] = history.future as [T, ...T[]];
  return { past: [...history.past, history.present], present, future, open: null };
}
