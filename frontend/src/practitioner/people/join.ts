/**
 * The code of a colleague's link. It comes in the address's fragment, and is taken out of it at once. The tab's own history
 * keeps it meanwhile: a phone throws a page away while a password is fetched from another app, and begins it anew.
 */
import { signal } from '@preact/signals';

export const joining = signal<string | null>(null);

export function takeJoinCode(): void {
  const code = /^#join=([0-9A-Za-z-]+)$/.exec(location.hash)?.[1] ?? (history.state as { join?: string } | null)?.join;
  if (!code) return;
  joining.value = code;
  history.replaceState({ join: code }, '', location.pathname + location.search);
}

export function leaveJoining(): void {
  joining.value = null;
  history.replaceState(null, '');
}
