/** The server's word that something changed. It carries ids only; what changed is asked for. */
import { effect } from '@preact/signals';
import { session } from './session';
import { ASK_AGAIN_MS, refreshAbout, refreshAll } from './resource';

/** Pause before listening again after the server refused. House value, milliseconds. */
const LISTEN_AGAIN_MS = 15_000;
let source: EventSource | null = null;
let later: ReturnType<typeof setTimeout> | undefined;

function listen(): void {
  let wasLost = false;
  const heard = new EventSource('/api/v1/live');
  heard.addEventListener('changed', (event) => void refreshAbout((event as MessageEvent<string>).data));
  heard.addEventListener('pairing', refreshAll);
  heard.addEventListener('open', () => {
    if (wasLost) refreshAll(); // whatever was said meanwhile was not heard
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
  refreshAll();
}

/** Listen while someone is signed in; ask again on being looked at and every minute. Call once. */
export function startLive(): void {
  effect(() => (session.value === 'in' ? void (stop(), listen()) : stop()));
  const look = () => document.visibilityState === 'visible' && session.value === 'in' && refreshAll();
  addEventListener('focus', look);
  document.addEventListener('visibilitychange', look);
  setInterval(look, ASK_AGAIN_MS);
}
