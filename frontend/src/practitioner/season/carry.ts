/** Carrying a session to another day: by keyboard, by buttons, or dragged with a mouse or pen. */
import type { LocalDate } from '../../shared/dates';
import { t } from '../words';
import type { Desk } from './desk';
import { activityName, dayLabel } from './phrases';
import { carriedTo, idOf, isSame, moveSession, pin, unpin } from './plan';
import type { ProposedSession } from './types';

const words = (session: Pick<ProposedSession, 'date' | 'activity'>, date = session.date) => ({ what: activityName(session.activity), date: dayLabel(date) });

export function pickUp(desk: Desk, { date, activity, locked, pinned }: ProposedSession): void {
  desk.say(t('seaPicked', words({ date, activity })));
  desk.carried.value = { date, activity, locked, pinned, to: date };
}

export function carryTo(desk: Desk, to: LocalDate): void {
  const carried = desk.carried.peek();
  if (!carried) return;
  desk.carried.value = { ...carried, to };
  desk.say(t('seaCarried', words(carried, to)));
}
export function carryBy(desk: Desk, days: number): void {
  const carried = desk.carried.peek();
  if (carried) carryTo(desk, carriedTo(desk.plan.peek(), desk.today, carried.to, days));
}

export function putBack(desk: Desk): void {
  const carried = desk.carried.peek();
  desk.carried.value = null;
  if (carried) desk.say(t('seaPutBack', words(carried)));
}

export function putDown(desk: Desk): void {
  const carried = desk.carried.peek();
  if (!carried || carried.to === carried.date) return putBack(desk);
  desk.change((plan) => moveSession(plan, carried, carried.to), t('seaMoved', words(carried, carried.to)), { focus: idOf({ ...carried, date: carried.to }) });
}

/** The session stays where it lies, for planning or for the client too, or may move again. */
export function hold(desk: Desk, how: 'pin' | 'lock' | 'free'): void {
  const carried = desk.carried.peek();
  if (!carried) return;
  const said = { pin: 'seaPinned', lock: 'seaLockedSaid', free: 'seaUnpinned' } as const;
  desk.change((plan) => (how === 'free' ? unpin(plan, carried) : pin(plan, carried, how === 'lock')), t(said[how], words(carried)), { focus: idOf(carried) });
}

const STEPS: Record<string, number> = { ArrowLeft: -1, ArrowRight: 1, ArrowUp: -7, ArrowDown: 7 };

/** Keys on a session's button; Enter and Space are its click. */
export function carryByKey(desk: Desk, session: ProposedSession, event: KeyboardEvent): void {
  const carried = desk.carried.peek();
  if (!carried || !isSame(carried, session)) return;
  const step = STEPS[event.key];
  if (step !== undefined) carryBy(desk, step);
  else if (event.key === 'Escape') putBack(desk);
  else return;
  event.preventDefault();
}

/** A move of the pointer under this is a click. House value, px. */
const DRAG_FROM_PX = 6;
const dayAt = (x: number, y: number): LocalDate | null => document.elementFromPoint(x, y)?.closest<HTMLElement>('[data-date]')?.dataset.date ?? null;

/** Begins to follow a mouse or pen; a finger scrolls the page and uses the buttons. */
export function dragFrom(desk: Desk, session: ProposedSession, down: PointerEvent): void {
  if (down.pointerType === 'touch' || down.button !== 0) return;
  let dragging = false;
  const move = (event: PointerEvent) => {
    if (!dragging && Math.hypot(event.clientX - down.clientX, event.clientY - down.clientY) < DRAG_FROM_PX) return;
    if (!dragging) pickUp(desk, session);
    dragging = true;
    const date = dayAt(event.clientX, event.clientY);
    if (date && date !== desk.carried.peek()?.to) carryTo(desk, date);
  };
  const end = () => {
    removeEventListener('pointermove', move);
    removeEventListener('pointerup', end);
    removeEventListener('pointercancel', end);
    if (dragging) putDown(desk);
  };
  addEventListener('pointermove', move);
  addEventListener('pointerup', end);
  addEventListener('pointercancel', end);
}
