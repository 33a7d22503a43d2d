/**
 * A countdown kept by the instant at which it ends, never by counting ticks: a locked screen, a sleeping tab and a reload change nothing.
 * Times are milliseconds since 1970.
 */
export interface Countdown {
  /** Whole length, for the drawing. */
  total_ms: number;
  ends_at: number;
  /** What was left when it was paused; null while it runs. */
  paused_ms: number | null;
}

export const MORE_REST_S = 30;
/** After this a finished rest is no longer news: it is put away without a sound. House value, minutes. */
export const STALE_AFTER_MIN = 10;

export const startCountdown = (seconds: number, now: number): Countdown => ({
  total_ms: seconds * 1000,
  ends_at: now + seconds * 1000,
  paused_ms: null,
});

/** Milliseconds left, never below zero. */
export const left = (timer: Countdown, now: number): number => timer.paused_ms ?? Math.max(0, timer.ends_at - now);
/** Whole seconds as shown: it says 0 only when it is over. */
export const secondsLeft = (timer: Countdown, now: number): number => Math.ceil(left(timer, now) / 1000);
/** 0 at the start to 1 at the end. */
export const walked = (timer: Countdown, now: number): number => (timer.total_ms === 0 ? 1 : 1 - left(timer, now) / timer.total_ms);
export const isOver = (timer: Countdown, now: number): boolean => left(timer, now) === 0;
export const isStale = (timer: Countdown, now: number): boolean =>
  timer.paused_ms === null && now - timer.ends_at > STALE_AFTER_MIN * 60_000;

export const pause = (timer: Countdown, now: number): Countdown => ({ ...timer, paused_ms: left(timer, now) });

export function resume(timer: Countdown, now: number): Countdown {
  return timer.paused_ms === null ? timer : { ...timer, ends_at: now + timer.paused_ms, paused_ms: null };
}

export function addSeconds(timer: Countdown, seconds: number, now: number): Countdown {
  const more = seconds * 1000;
  const kept = left(timer, now);
  const total_ms = Math.max(timer.total_ms, kept) + more;
  return timer.paused_ms === null
    ? { total_ms, ends_at: now + kept + more, paused_ms: null }
    : { ...timer, total_ms, paused_ms: kept + more };
}

/** "0:42", "1:05". */
export const clock = (seconds: number): string => `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
