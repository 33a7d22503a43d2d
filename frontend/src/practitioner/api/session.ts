/** Who is signed in. When the session ends, the page stays as it is behind the sign-in form: nothing typed is lost. */
import { signal } from '@preact/signals';
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

function take(person: Me): void {
  // Another person at the same desk must not find the first one's words.
  if (me.value && me.value.practitioner.id !== person.practitioner.id) forgetEverything();
  me.value = person;
  session.value = 'in';
  refreshAll();
}

/** Sign in; answers what went wrong, null when all is well. */
export async function signIn(email: string, password: string): Promise<Failure | null> {
  try {
    take((await request<Me>('POST', '/sign-in', { body: { email, password } })).data);
    return null;
  } catch (error) {
    return failureFrom(error);
  }
}

/** End the session here and on the server; answers what went wrong, null when all is well. */
export async function signOut(): Promise<Failure | null> {
  try {
    await request<void>('POST', '/sign-out');
  } catch (error) {
    const failure = failureFrom(error);
    if (failure.kind !== 'signed_out') return failure; // still signed in: say so rather than pretend
  }
  forgetEverything();
  me.value = null;
  session.value = 'out';
  return null;
}

function forgetEverything(): void {
  forgetAll();
  forgetDrafts();
}
