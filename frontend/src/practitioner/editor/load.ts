/** Everything that the editor needs before it can show anything, asked for at once. */
import { today } from '../../shared/dates';
import type { ProgramContent } from '../../shared/program';
import { me } from '../api/session';
import { mayWrite } from '../rights/rights';
import { toLibrary } from '../exercises/entry';
import { readClient, readCurrent, readDraft, readLibrary, readVersion } from './calls';
import { Editor } from './editor';
import { unsentIn, type Unsent, type UnsentStore } from './unsent';
import type { Draft, DraftBody, Version } from './types';

const contentOf = (unsent: Unsent | null, draft: Draft | undefined, current: Version | undefined): ProgramContent | null => {
  if (unsent) return unsent.draft?.content ?? current?.content ?? null;
  return draft?.content ?? current?.content ?? null;
};

/** The version that the draft was begun from; a newer one is told of, not slipped under it. */
async function baseOf(client: string, begun: DraftBody | null, current: Version | undefined): Promise<Version | null> {
  if (!begun || begun.base_number === current?.number) return current ?? null;
  return begun.base_number === null ? null : (await readVersion(client, begun.base_number)).data;
}

/** What waits in this browser; a wish to throw away a draft that never was is none. */
function waitingIn(store: UnsentStore): Unsent | null {
  const unsent = store.read();
  if (unsent && (unsent.draft || unsent.etag)) return unsent;
  store.clear();
  return null;
}

/** @throws RequestFailed */
export async function loadEditor(id: string): Promise<Editor> {
  const [client, library, current, draft] = await Promise.all([readClient(id), readLibrary(), readCurrent(id), readDraft(id)]);
  const store = unsentIn(localStorage, me.value?.practitioner.id ?? '', id);
  const unsent = mayWrite.value ? waitingIn(store) : null;
  const base = await baseOf(id, unsent ? unsent.draft : (draft?.data ?? null), current?.data);
  const editor = new Editor({
    client: client.data,
    library: toLibrary(library.data.items),
    today: today(new Date(), client.data.time_zone),
    base,
    content: contentOf(unsent, draft?.data, current?.data),
    draft: unsent ? { etag: unsent.etag, at: new Date(unsent.at) } : draft && { etag: draft.etag, at: new Date(draft.data.saved_at) },
    store,
  });
  if (unsent) editor.keepNow();
  return editor;
}
