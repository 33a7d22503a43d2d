/**
 * Walks that another app shared to this one. The worker puts the files by, the page takes them out when it can read them:
 * that may be after a cold start, offline, or only once the phone is paired. They leave the phone in no case.
 */
export const SHARED = 'steadfoot-shared';
/** Where the share is posted: the address of the form itself, so that no other page can come of it. As in manifest.webmanifest. */
export const SHARE_PATH = '/app/walk';
/** The form's address after a share that could not be kept. The server answers with it too, where there is no worker yet. */
export const MISSED_PATH = '/app/walk?share=missed';
const FIELD = 'walk';
const FAULT = 'X-Fault';

/** A long day at a point a second is some 5 MB. House value, bytes. */
export const FILE_MAX_BYTES = 20_000_000;
/** What can be said of a share before it is read. */
export type ShareFault = 'too_large' | 'not_gpx';
export interface Shared { key: string; file: Blob; fault: ShareFault | null }

const bare = (fault: ShareFault): Response => new Response(null, { headers: { [FAULT]: fault } });
const toKeep = (file: Blob): Response => (file.size > FILE_MAX_BYTES ? bare('too_large') : new Response(file));

/** Keeps every file of a share; of one without a file, or with one that is too large, that this was so. Rejects where storage is refused. */
export async function putBy(form: FormData): Promise<void> {
  const files = form.getAll(FIELD).filter((part): part is File => typeof part !== 'string');
  const cache = await caches.open(SHARED);
  for (const reply of files.length ? files.map(toKeep) : [bare('not_gpx')]) await cache.put(`${SHARE_PATH}/${crypto.randomUUID()}`, reply);
}

/** The share that has waited longest; null: none, or storage is refused. */
export async function firstShared(): Promise<Shared | null> {
  try {
    const cache = await caches.open(SHARED);
    const [request] = await cache.keys();
    const kept = request && (await cache.match(request));
    if (!kept) return null;
    return { key: request.url, file: await kept.blob(), fault: kept.headers.get(FAULT) as ShareFault | null };
  } catch {
    return null;
  }
}

/** Whether anything waits; it does not where storage is refused. */
export const anyShared = (): Promise<boolean> => caches.open(SHARED).then((cache) => cache.keys()).then((keys) => keys.length > 0).catch(() => false);
export const letGo = async ({ key }: Shared): Promise<unknown> => (await caches.open(SHARED)).delete(key);
/** With everything else off this phone. */
export const forgetShared = (): Promise<unknown> => caches.delete(SHARED);
