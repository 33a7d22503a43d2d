/** The browser's passkeys. Bytes travel as URL-safe base 64, in the shape that the server's description gives. */
import type { Schemas } from './types';

export type PasskeyAnswer = Schemas['PasskeyAnswer'];
export type MadePasskey = Omit<Schemas['NewPasskey'], 'name'>;
type Options = Schemas['PasskeyOptions'];

/** Why there is no answer: the person said no or let it lapse, the key is known here already, or this browser cannot. */
export type Refusal = 'cancelled' | 'known' | 'unable';
export class PasskeyFailed extends Error {
  constructor(readonly reason: Refusal) {
    super(reason);
  }
}

/** Whether this browser, at this address, has passkeys: never where the address is a number. */
export function passkeysWork(): boolean {
  return 'PublicKeyCredential' in globalThis && isSecureContext && !/^[\d.]+$|:/.test(location.hostname);
}

export function toText(bytes: ArrayBuffer): string {
  return btoa(String.fromCharCode(...new Uint8Array(bytes))).replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');
}
export function toBytes(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(text.replace(/-/g, '+').replace(/_/g, '/')), (letter) => letter.charCodeAt(0));
}

interface Described { id: string; type: string }
const known = (list: unknown): PublicKeyCredentialDescriptor[] =>
  ((list ?? []) as Described[]).map(({ id }) => ({ type: 'public-key', id: toBytes(id) }));

async function asked(ask: () => Promise<Credential | null>): Promise<PublicKeyCredential> {
  try {
    const found = await ask();
    if (found) return found as PublicKeyCredential;
  } catch (error) {
    const name = error instanceof DOMException ? error.name : '';
    throw new PasskeyFailed(name === 'InvalidStateError' ? 'known' : name === 'NotAllowedError' || name === 'AbortError' ? 'cancelled' : 'unable');
  }
  throw new PasskeyFailed('cancelled');
}

/** @throws PasskeyFailed */
export async function makePasskey({ public_key }: Options): Promise<MadePasskey> {
  const given = public_key as unknown as { challenge: string; user: { id: string }; excludeCredentials?: unknown };
  const publicKey = {
    ...public_key,
    challenge: toBytes(given.challenge),
    user: { ...given.user, id: toBytes(given.user.id) },
    excludeCredentials: known(given.excludeCredentials),
  } as unknown as PublicKeyCredentialCreationOptions;
  const made = await asked(() => navigator.credentials.create({ publicKey }));
  const response = made.response as AuthenticatorAttestationResponse;
  return { id: made.id, client_data: toText(response.clientDataJSON), attestation: toText(response.attestationObject) };
}

/** @throws PasskeyFailed */
export async function showPasskey({ public_key }: Options): Promise<PasskeyAnswer> {
  const given = public_key as unknown as { challenge: string; allowCredentials?: unknown };
  const publicKey = {
    ...public_key,
    challenge: toBytes(given.challenge),
    allowCredentials: known(given.allowCredentials),
  } as unknown as PublicKeyCredentialRequestOptions;
  const shown = await asked(() => navigator.credentials.get({ publicKey }));
  const response = shown.response as AuthenticatorAssertionResponse;
  return {
    id: shown.id,
    client_data: toText(response.clientDataJSON),
    authenticator_data: toText(response.authenticatorData),
    signature: toText(response.signature),
  };
}
