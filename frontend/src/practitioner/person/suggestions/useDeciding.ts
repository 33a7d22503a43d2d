import { useState } from 'preact/hooks';
import { decideProgressions } from '../../api/calls';
import { draft, dropDraft } from '../../api/drafts';
import { failureFrom, type Failure } from '../../api/request';
import { refreshAbout } from '../../api/resource';
import type { Choice, Progressed, Suggestions } from '../../api/types';
import { acceptOf, declineOf, unreadable, type Ready, type Typed } from './choices';

/** What was typed and marked for one suggestion; it outlives a change of page. */
interface Kept { typed: Typed; marked: boolean; reason: string }
const NOTHING: Kept = { typed: {}, marked: false, reason: '' };
const named = (id: string) => `progress.${id}`;

function read(id: string): Kept {
  const { value } = draft(named(id));
  return value ? (JSON.parse(value) as Kept) : NOTHING;
}

const keep = (id: string, change: Partial<Kept>): void => void (draft(named(id)).value = JSON.stringify({ ...read(id), ...change }));

/** Somebody published, or the phone said more: what was suggested is not any more. */
const isOld = (failure: Failure): boolean =>
  failure.kind === 'problem' && (failure.problem.status === 412 || failure.problem.code === 'suggestion-gone');

/** Where the suggestions of one person are read. */
export const pathOf = (client: string): string => `/clients/${encodeURIComponent(client)}/suggestions`;

/** Marks, edits and reasons of one person's suggestions, and sending them. Whatever is not sent stays as it was. */
export function useDeciding(client: string, data: Suggestions, ready: readonly Ready[]) {
  const [busy, setBusy] = useState<'sending' | 'fetching' | null>(null);
  const [failure, setFailure] = useState<Failure | null>(null);
  const [old, setOld] = useState(false);
  const [done, setDone] = useState<Progressed | null>(null);
  const marked = ready.filter(({ first }) => read(first.id).marked);

  /** What is shown was decided on, or is not any more: nothing else is decided before the next list is there. */
  const fetchAgain = () => (setBusy('fetching'), refreshAbout(client, pathOf(client)));
  async function send(choices: readonly Choice[], about: readonly Ready[]): Promise<boolean> {
    if (busy) return false;
    setBusy('sending');
    setFailure(null);
    setOld(false);
    try {
      const progressed = await decideProgressions(client, data.program_number ?? 0, choices);
      about.forEach(({ first }) => dropDraft(named(first.id)));
      setDone(progressed);
      await fetchAgain();
      return true;
    } catch (error) {
      const found = failureFrom(error);
      if (isOld(found)) {
        await fetchAgain();
        setOld(true);
      } else setFailure(found);
      return false;
    } finally {
      setBusy(null);
    }
  }
  const accept = (ones: readonly Ready[]) => send(ones.map((one) => acceptOf(one, read(one.first.id).typed)), ones);
  const decline = (one: Ready) => send(declineOf(one, read(one.first.id).reason.trim()), [one]);
  const faulty = (ones: readonly Ready[]) => ones.find(({ first }) => unreadable(read(first.id).typed).length > 0) ?? null;
  return { busy, failure, old, done, marked, read, keep, accept, decline, faulty };
}
export type Deciding = ReturnType<typeof useDeciding>;
