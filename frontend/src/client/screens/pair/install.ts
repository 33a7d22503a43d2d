/** Whether the app stands on the home screen, and how to put it there. */
import { signal } from '@preact/signals';

export interface InstallPrompt extends Event {
  prompt(): Promise<unknown>;
}
/** The browser's own offer to install, where it makes one. */
export const installOffer = signal<InstallPrompt | null>(null);

export function watchInstall(): void {
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    installOffer.value = event as InstallPrompt;
  });
  addEventListener('appinstalled', () => (installOffer.value = null));
}

export const isInstalled = (): boolean =>
  matchMedia('(display-mode: standalone)').matches || (navigator as { standalone?: boolean }).standalone === true;

/** There a home-screen app has storage of its own: what is entered in the browser does not move along. */
export const isIos = (): boolean => /iPhone|iPad|iPod/.test(navigator.userAgent) || (navigator.platform === 'MacIntel' && navigator.maxTouchPoints > 1);
