import { useEffect, useState } from 'preact/hooks';

/** The time, four times a second while `running`; a page without a timer never wakes the phone. */
export function useTicker(running: boolean): number {
  const [, setNow] = useState(0);
  useEffect(() => {
    if (!running) return;
    const look = () => setNow(Date.now());
    look();
    const timer = setInterval(look, 250);
    return () => clearInterval(timer);
  }, [running]);
  return Date.now();
}
