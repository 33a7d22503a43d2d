import { useEffect, useRef, useState } from 'preact/hooks';
import type { Caseload } from '../api/types';
import { countChanges } from './sentences';

/** How long pointer and focus must have left the table before rows may move by themselves. House value, milliseconds. */
export const STILL_MS = 3_000;

/**
 * Rows never jump under the pointer: news that comes while someone points at the table, or is in it with the keyboard, waits and is
 * counted; it is shown on the button, or by itself when the table has been left alone for a while.
 */
export function useSteady(latest: Caseload | null) {
  const [shown, setShown] = useState<Caseload | null>(latest);
  const inside = useRef({ pointer: false, focus: false });
  const leftAt = useRef(-Infinity);
  const newest = useRef(latest);
  newest.current = latest;
  const show = () => setShown(newest.current);
  const isBusy = () => inside.current.pointer || inside.current.focus;
  const showIfStill = () => {
    if (!isBusy() && performance.now() - leftAt.current >= STILL_MS) show();
  };
  useEffect(() => {
    if (!shown || (latest && countChanges(shown.items, latest.items) === 0)) show();
    else showIfStill();
  }, [latest]);
  const set = (what: 'pointer' | 'focus', to: boolean) => {
    inside.current[what] = to;
    if (to) return;
    leftAt.current = performance.now();
    setTimeout(showIfStill, STILL_MS);
  };
  const handlers = {
    onPointerEnter: () => set('pointer', true),
    onPointerLeave: () => set('pointer', false),
    onFocusIn: () => set('focus', true),
    onFocusOut: (event: FocusEvent) => {
      if (!(event.currentTarget as Element).contains(event.relatedTarget as Node | null)) set('focus', false);
    },
  };
  const waiting = shown && latest ? countChanges(shown.items, latest.items) : 0;
  return { shown: shown ?? latest, waiting, show, handlers };
}
