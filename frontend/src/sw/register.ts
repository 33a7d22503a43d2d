/** Registers the service worker and offers a new version; the pages show the offer only outside a session. */
import { signal } from '@preact/signals';

/** A new version is on the phone and waits. */
export const updateWaiting = signal(false);
const WORKER = '/app/sw.js';
type Policies = { createPolicy(name: string, rules: { createScriptURL(): string }): { createScriptURL(any: string): string } };
let registration: ServiceWorkerRegistration | null = null;
let accepted = false;

function watch(found: ServiceWorkerRegistration): void {
  const look = () => (updateWaiting.value = Boolean(found.waiting && navigator.serviceWorker.controller));
  look();
  found.addEventListener('updatefound', () => found.installing?.addEventListener('statechange', look));
}

/** The worker's address. Browsers with Trusted Types take it only from the one policy that the server's headers name. */
const worker = (): string => {
  const { trustedTypes } = globalThis as { trustedTypes?: Policies };
  return trustedTypes?.createPolicy('app', { createScriptURL: () => WORKER }).createScriptURL('') ?? WORKER;
};

/** Call once after the first drawing. Without a worker the app still works while there is a network. */
export async function registerWorker(): Promise<void> {
  if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
  try {
    registration = await navigator.serviceWorker.register(worker(), { scope: '/app/' });
  } catch {
    return; // private mode or storage refused
  }
  watch(registration);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void registration?.update().catch(() => undefined);
  });
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    // Only the page that said yes loads again: another may hold a half-filled form.
    if (accepted) location.reload();
  });
}

/** The person's yes. */
export function useNewVersion(): void {
  accepted = true;
  registration?.waiting?.postMessage('use-new-version');
}
