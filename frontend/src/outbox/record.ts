/** The practice's copy of this person's record. Asked for by a person only; nothing of it is kept here. */
import type { Fetch } from './http';

/** Putting a long record together takes a while, ms. House value. */
const PATIENCE_MS = 120_000;

/** The zip, or null when it could not be had now. */
export async function callRecord(fetch: Fetch, token: string, language: string): Promise<Blob | null> {
  try {
    const response = await fetch(`/api/v1/record.zip?language=${language}`, {
      headers: { Authorization: `Bearer ${token}` },
      cache: 'no-store',
      credentials: 'omit',
      redirect: 'error', // a network's sign-in page is no answer
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    const ours = response.ok && response.headers.get('Content-Type') === 'application/zip';
    return ours ? await response.blob() : null;
  } catch {
    return null;
  }
}
