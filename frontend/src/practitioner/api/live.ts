/** The server's word that something changed. It carries ids only; what changed is asked for. */
import { effect } from '@preact/signals';
import { session } from './session';
import { ASK_AGAIN_MS, hearAbout, refreshAll } from './resource';

/** Pause before listening again after the server refused. House value, milliseconds. */
const LISTEN_AGAIN_MS = 15_000;
/**
 * A page nobody has touched for so long asks nothing by itself: each question counts as use, and an unattended desk would never be
 * signed out. Half of the server's hour. House value, milliseconds.
 */
const UNTOUCHED_MS = 30 * 60_000;
let touchedAt = 0;
let source: EventSource | null = null;
let later: ReturnType<typeof setTimeout> | undefined;

const isTouched = () => performance.now() - touchedAt < UNTOUCHED_MS;
const look = () => void (document.visibilityState === 'visible' && session.value === 'in' && isTouched() && refreshAll());

function touch(): void {
  const slept = !isTouched();
  touchedAt = performance.now();
  if (slept) look();
}

function listen(): void {
  let wasLost = false;
  const heard = new EventSource('/api/v1/live');
  heard.addEventListener('changed', (event) => isTouched() && hearAbout((event as MessageEvent<string>).data));
  heard.addEventListener('pairing', look);
  heard.addEventListener('open', () => {
    if (wasLost) look(); // whatever was said meanwhile was not heard
    wasLost = false;
  });
  heard.addEventListener('error', () => {
    wasLost = true;
    if (heard.readyState === EventSource.CLOSED) later = setTimeout(restart, LISTEN_AGAIN_MS);
  });
  source = heard;
}

function stop(): void {
  clearTimeout(later);
  source?.close();
  source = null;
}

function restart(): void {
  stop();
  if (session.value !== 'in') return;
  listen();
  look();
}

/** Listen while someone is signed in; ask again on being looked at and every minute. Call once. */
export function startLive(): void {
  effect(() => (session.value === 'in' ? void (stop(), listen()) : stop()));
  touchedAt = performance.now();
  for (const use of ['pointerdown', 'pointermove', 'keydown'] as const) addEventListener(use, touch, { passive: true });
  addEventListener('focus', () => (touch(), look()));
  document.addEventListener('visibilitychange', look);
  setInterval(look, ASK_AGAIN_MS);
}
