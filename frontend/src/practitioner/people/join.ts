/** The code of a colleague's link. It comes in the address's fragment, and is taken out of it at once. */
import { signal } from '@preact/signals';

export const joining = signal<string | null>(null);

export function takeJoinCode(): void {
  const code = /^#join=([0-9A-Za-z-]+)$/.exec(location.hash)?.[1];
  if (!code) return;
  joining.value = code;
  history.replaceState(null, '', location.pathname + location.search);
}

export const leaveJoining = (): void => void (joining.value = null);
