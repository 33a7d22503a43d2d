/** A stop-watch by end and start time: right also after the computer slept or the page was busy. */
import { useEffect, useState } from 'preact/hooks';

export interface Watch { startedAt: number | null; stoppedAt: number | null }
export const STILL: Watch = { startedAt: null, stoppedAt: null };
/** How often the shown time is renewed; what is taken is exact. Milliseconds. */
const TICK_MS = 100;

/** Milliseconds run so far; no more than `limitS` seconds where the test has a fixed time. */
export function elapsedMs({ startedAt, stoppedAt }: Watch, now: number, limitS: number | null): number {
  if (startedAt === null) return 0;
  const run = Math.max(0, (stoppedAt ?? now) - startedAt);
  return limitS === null ? run : Math.min(run, limitS * 1000);
}

/** A test that takes whole seconds or tenths: tenths, as a hand on a key is no finer. */
export const secondsOf = (ms: number): number => Math.round(ms / 100) / 10;

/** Start, stop, and the time in between. `limitS`: the test ends by itself after so many seconds. */
export function useWatch(limitS: number | null, onStop: (seconds: number) => void) {
  const [watch, setWatch] = useState<Watch>(STILL);
  const [now, setNow] = useState(0);
  const running = watch.startedAt !== null && watch.stoppedAt === null;
  const ms = elapsedMs(watch, now, limitS);
  const stop = () => {
    const stoppedAt = performance.now();
    setWatch({ ...watch, stoppedAt });
    setNow(stoppedAt);
    onStop(secondsOf(elapsedMs({ ...watch, stoppedAt }, stoppedAt, limitS)));
  };
  const start = () => {
    const at = performance.now();
    setNow(at);
    setWatch({ startedAt: at, stoppedAt: null });
  };
  useEffect(() => {
    if (!running) return undefined;
    const ticking = setInterval(() => setNow(performance.now()), TICK_MS);
    return () => clearInterval(ticking);
  }, [running]);
  useEffect(() => {
    if (running && limitS !== null && ms >= limitS * 1000) stop();
  }, [running, ms]);
  return { running, ms, done: watch.stoppedAt !== null, toggle: running ? stop : start };
}
