/** Who is signed in. When the session ends, the page stays as it is behind the sign-in form: nothing typed is lost. */
import { signal } from '@preact/signals';
import { askPasskey, askPassword, signInChallenge, type Shown } from './account';
import { showPasskey } from './passkeys';
import { failureFrom, request, whenSignedOut, type Failure } from './request';
import type { Me } from './types';
import { forgetAll, refreshAll } from './resource';
import { forgetDrafts } from './drafts';

export type SessionState = 'asking' | 'unreachable' | 'out' | 'in' | 'ended';
export const session = signal<SessionState>('asking');
export const me = signal<Me | null>(null);

whenSignedOut(() => {
  if (session.value === 'in') session.value = 'ended';
});

/** Find out whether there is a session. */
export async function startSession(): Promise<void> {
  session.value = 'asking';
  try {
    me.value = (await request<Me>('GET', '/me')).data;
    session.value = 'in';
  } catch (error) {
    session.value = failureFrom(error).kind === 'network' ? 'unreachable' : 'out';
  }
}

/** Ask again who is signed in, and as what: after a second factor was set up. */
export async function refreshMe(): Promise<void> {
  me.value = (await request<Me>('GET', '/me')).data;
}

/** Someone is signed in from now on. */
export function take(person: Me): void {
  // Another person at the same desk must not find the first one's words.
  if (me.value && me.value.practitioner.id !== person.practitioner.id) forgetEverything();
  me.value = person;
  session.value = 'in';
  refreshAll();
}

/** Sign in; answers what went wrong, null when all is well. That a second factor is asked for is a problem that names the ways. */
export async function signIn(email: string, password: string, shown: Shown = {}): Promise<Failure | null> {
  try {
    take(await askPassword(email, password, shown));
    return null;
  } catch (error) {
    return failureFrom(error);
  }
}

/**
 * Sign in with a passkey alone.
 * @throws PasskeyFailed, RequestFailed
 */
export async function signInWithPasskey(): Promise<void> {
  take(await askPasskey(await showPasskey(await signInChallenge())));
}

/** Forget who was signed in, once the server has ended the session. */
export function leave(): void {
  forgetEverything();
  me.value = null;
  session.value = 'out';
}

/** End the session here and on the server; answers what went wrong, null when all is well. */
export async function signOut(): Promise<Failure | null> {
  try {
    await request<void>('POST', '/sign-out');
  } catch (error) {
    const failure = failureFrom(error);
    if (failure.kind !== 'signed_out') return failure; // still signed in: say so rather than pretend
  }
  leave();
  return null;
}

function forgetEverything(): void {
  forgetAll();
  forgetDrafts();
}
