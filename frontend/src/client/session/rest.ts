/** The running rest: one at a time, kept in a draft by its end, so that a locked screen and a reload change nothing. */
import { signal } from '@preact/signals';
import { clearDraft, draftKey, loadDraft, saveDraft } from '../../outbox';
import { soundEnd } from './alerts';
import { addSeconds, isOver, isStale, left, MORE_REST_S, pause, resume, startCountdown, type Countdown } from './timer';

export interface Rest {
  timer: Countdown;
  planned_id: string;
}
const DRAFT = 'rest';
export const rest = signal<Rest | null>(null);
/** Said once when a rest has ended, until the next one. */
export const restIsOver = signal(false);
let waiting: ReturnType<typeof setTimeout> | undefined;

function show(to: Rest | null): void {
  rest.value = to;
  clearTimeout(waiting);
  if (to && to.timer.paused_ms === null) waiting = setTimeout(look, left(to.timer, Date.now()) + 20);
}

function end(loud: boolean): void {
  show(null);
  restIsOver.value = loud;
  void clearDraft(DRAFT).catch(() => undefined); // a rest that stays in the draft is stale at the next start
  if (loud) soundEnd();
}

/** The end may have come while the phone slept. */
function look(): void {
  const at = rest.value;
  if (!at) return;
  if (isStale(at.timer, Date.now())) return end(false);
  if (isOver(at.timer, Date.now())) return end(true);
  show(at);
}

export async function startRestKeeping(): Promise<void> {
  document.addEventListener('visibilitychange', look);
  show((await loadDraft<Rest>(DRAFT).catch(() => undefined)) ?? null);
  look();
}

function change(to: Rest): void {
  show(to);
  void saveDraft(DRAFT, to).catch(() => undefined); // the count goes on without it; only a reload would lose it
}

/** The rest after a set, and the named value that keeps it, to be stored together with the set. */
export function restAfter(seconds: number, planned_id: string): { begin: () => void; also: Record<string, unknown> } {
  const next = seconds > 0 ? { timer: startCountdown(seconds, Date.now()), planned_id } : null;
  const begin = () => {
    restIsOver.value = false;
    show(next);
  };
  return { begin, also: { [draftKey(DRAFT)]: next ?? undefined } };
}

export const pauseRest = (): void => void (rest.value && change({ ...rest.value, timer: pause(rest.value.timer, Date.now()) }));
export const resumeRest = (): void => void (rest.value && change({ ...rest.value, timer: resume(rest.value.timer, Date.now()) }));
export const addRest = (): void =>
  void (rest.value && change({ ...rest.value, timer: addSeconds(rest.value.timer, MORE_REST_S, Date.now()) }));
export const endRest = (): void => end(false);
