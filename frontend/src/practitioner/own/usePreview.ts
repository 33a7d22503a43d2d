/** Asks the server for one pose at a time; changes made meanwhile are put together and asked next. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { failureFrom, type Failure } from '../api/request';
import { preview, type Ask, type Preview } from './calls';
import type { Movement, View } from './model';

export interface Look {
  key: string;
  view: View;
  mirror: boolean;
  whole: boolean;
}
export type Change = Partial<Pick<Ask, 'set' | 'drag'>>;

/** Too many questions: after this the same one is asked again, ms. House. */
const PATIENCE_MS = 1000;
/** Between two questions of one drag, ms: the server takes 600 a minute of a person. House. */
const GAP_MS = 110;
const pause = () => new Promise((done) => setTimeout(done, GAP_MS));

interface Running {
  movement: Movement;
  look: Look;
  /** What the drawing on the page was made from. */
  shown: { movement: Movement; look: string } | null;
  change: Change | null;
  busy: boolean;
}

export function usePreview(movement: Movement, look: Look, onChange: (movement: Movement) => void) {
  const [answer, setAnswer] = useState<Preview | null>(null);
  const [failure, setFailure] = useState<Failure | null>(null);
  const state = useRef<Running>({ movement, look, shown: null, change: null, busy: false });
  const now = state.current;
  now.movement = movement;
  now.look = look;
  const told = useRef(onChange);
  told.current = onChange;

  async function run(): Promise<void> {
    if (now.busy) return;
    now.busy = true;
    try {
      while (now.change || !now.shown || now.shown.movement !== now.movement || now.shown.look !== JSON.stringify(now.look)) {
        await once();
        if (now.change) await pause();
      }
      setFailure(null);
    } catch (error) {
      const failed = failureFrom(error);
      setFailure(failed);
      if (failed.kind === 'problem' && failed.problem.status === 429) setTimeout(() => void run(), PATIENCE_MS);
    } finally {
      now.busy = false;
    }
  }

  async function once(): Promise<void> {
    const { movement: from, look: at, change } = now;
    now.change = null;
    const found = await preview({ movement: from, key: at.key, view: at.view, mirror: at.mirror, whole: at.whole, set: {}, ...change });
    if (now.movement !== from) return; // undone or replaced meanwhile: this answer is about something else
    now.shown = { movement: change ? found.movement : from, look: JSON.stringify(at) };
    setAnswer(found);
    if (!change) return;
    now.movement = found.movement;
    told.current(found.movement);
  }

  useEffect(() => void run(), [movement, look.key, look.view, look.whole]);

  useEffect(() => {
    const online = () => void run();
    addEventListener('online', online);
    return () => removeEventListener('online', online);
  }, []);

  const change = (next: Change) => {
    now.change = { ...now.change, ...next, set: { ...now.change?.set, ...next.set } };
    void run();
  };
  return { answer, failure, change, again: () => void run() };
}
