/** A pairing that the practice has answered and the person has not yet said yes to. Its code is spent, so it is kept until then. */
import { computed, signal } from '@preact/signals';
import { acceptPairing, askPairing, clearDraft, loadDraft, saveDraft, takeCodeFromAddress, type Device } from '../../../outbox';
import { navigate, path } from '../../../shared/router';
import { markSince } from '../../season/since';

const DRAFT = 'pairing';
/** The code of the link that opened the app. */
export const linkCode = signal<string | null>(null);
export const pending = signal<Device | null>(null);
/** The person wants to pair a phone that is paired already. A page like others: one goes back from it. */
export const pairingAnew = computed(() => path.value === '/pair');
export const pairAnew = (): void => navigate('/pair');

/** Takes the code out of the address at once, so that it stays in no history. */
export function takeLinkCode(): void {
  linkCode.value = takeCodeFromAddress();
}

export async function loadPending(): Promise<void> {
  pending.value = (await loadDraft<Device>(DRAFT).catch(() => undefined)) ?? null;
}

/** Rejects with PairingFailed or NotSaved. */
export async function ask(code: string): Promise<void> {
  const answer = await askPairing(code);
  pending.value = answer;
  linkCode.value = null;
  await saveDraft(DRAFT, answer);
}

/** Rejects with NotSaved. */
export async function accept(): Promise<void> {
  if (!pending.value) return;
  await acceptPairing(pending.value);
  await markSince();
  await putAway();
}

export async function putAway(): Promise<void> {
  pending.value = null;
  linkCode.value = null;
  await clearDraft(DRAFT).catch(() => undefined); // shown again at the next start at worst, and put away again
}
