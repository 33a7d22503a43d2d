/** A walk's file, chosen here or shared from another app, and what came of reading it. The reader itself is loaded when it is needed. */
import { signal } from '@preact/signals';
import { anyShared, firstShared, letGo } from '../../sw/shared';
import type { Fault, WalkRead } from './readGpx';

/** Why nothing was read. `not_loaded`: the reader is not on this phone and there is no network, so the file is not to blame. */
export type Unread = Fault | 'not_loaded';
/** Whether a shared walk waits to be read. */
export const sharedWaits = signal(false);

export async function loadShared(): Promise<void> {
  sharedWaits.value = await anyShared();
}

/** What a file says, or why it says nothing. */
export async function readWalk(file: Blob): Promise<WalkRead | Unread> {
  const reader = await import('./readGpx').catch(() => null);
  if (!reader) return 'not_loaded';
  return reader.readWalkFile(file).catch((error: unknown) => (error instanceof reader.WalkUnreadable ? error.fault : 'not_gpx'));
}

/** The shared walk that has waited longest goes to `use`, and is let go of once that kept it. Null: none waits. */
export async function takeShared(use: (walk: WalkRead) => Promise<void>): Promise<'read' | Unread | null> {
  const shared = await firstShared();
  if (!shared) return null;
  const read = shared.fault ?? (await readWalk(shared.file));
  if (read === 'not_loaded') return read;
  if (typeof read === 'object') await use(read);
  await letGo(shared).catch(() => undefined); // read again at worst
  await loadShared();
  return typeof read === 'object' ? 'read' : read;
}
