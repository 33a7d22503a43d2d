/** What the sender needs of the browser, in one place, so that everything else can be tested without one. */
import type { Sender, Surroundings } from './sender';

export function browserSurroundings(): Surroundings {
  return {
    fetch: (url, init) => fetch(url, init),
    now: () => Date.now(),
    random: () => Math.random(),
    setTimer: (run, ms) => setTimeout(run, ms),
    clearTimer: (timer) => clearTimeout(timer),
    alone: onePage(),
  };
}

/** House: no flush takes longer; who holds the lock for so long is frozen, ms. */
export const FROZEN_AFTER_MS = 25_000;

/** For one flush, not for life: a frozen page must not keep the others from sending. Two at once do no harm, only work. */
function onePage(): Surroundings['alone'] {
  let takenSince: number | null = null;
  return async (flush) => {
    const isFrozen = takenSince !== null && Date.now() - takenSince > FROZEN_AFTER_MS;
    if (isFrozen) takenSince = null;
    if (!navigator.locks || isFrozen) return flush();
    await navigator.locks.request('steadfoot.flush', { ifAvailable: true }, (lock) => {
      takenSince = lock ? null : (takenSince ?? Date.now());
      return lock ? flush() : undefined;
    });
  };
}

/** Every occasion to send that a page has. `reload` reads the log again: another page of this phone may have written. */
export function watchOccasions(sender: Sender, reload: () => Promise<void>): void {
  addEventListener('online', () => void sender.kick());
  document.addEventListener('visibilitychange', () => {
    const visible = document.visibilityState === 'visible';
    if (visible) void reload().catch(() => undefined);
    sender.setVisible(visible);
  });
}

/** What is known of this phone outside its database, to be told when that is gone. */
export interface Left {
  practice: string;
  /** How many entries had not been received. */
  unsent: number;
}
const LEFT = 'steadfoot.left';

/** Null forgets it. */
export function noteLeft(left: Left | null): void {
  try {
    if (left) localStorage.setItem(LEFT, JSON.stringify(left));
    else localStorage.removeItem(LEFT);
  } catch {
    // storage refused: then there is nothing to be missed either
  }
}

export function readLeft(): Left | null {
  try {
    return JSON.parse(localStorage.getItem(LEFT) ?? 'null') as Left | null;
  } catch {
    return null;
  }
}
