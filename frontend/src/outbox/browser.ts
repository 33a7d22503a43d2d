/** What the sender needs of the browser, in one place, so that everything else can be tested without one. */
import type { Sender, Surroundings } from './sender';

export function browserSurroundings(): Surroundings {
  return {
    fetch: (url, init) => fetch(url, init),
    now: () => Date.now(),
    random: () => Math.random(),
    setTimer: (run, ms) => setTimeout(run, ms),
    clearTimer: (timer) => clearTimeout(timer),
    alone: async (flush) => {
      // For one flush, not for life: a frozen page must not keep the others from sending.
      if (!navigator.locks) return flush();
      await navigator.locks.request('steadfoot.flush', { ifAvailable: true }, (lock) => (lock ? flush() : undefined));
    },
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
