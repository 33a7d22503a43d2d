import { useState } from 'preact/hooks';
import { removeTrip, saveTrip } from '../api/calls';
import { draft, dropDraft } from '../api/drafts';
import { failureFrom } from '../api/request';
import { refreshAbout } from '../api/resource';
import type { RouteReading, Trip, TripBody } from '../api/types';
import { failureWords } from '../parts/failureWords';
import { say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';
import { bodyOf, emptyLeg, formOf, legForm, nextDay, sentAgain, type TripForm } from './form';

/** The form, and the tag of what it was made from: a colleague's change meanwhile must not be overwritten unseen. */
interface Kept { form: TripForm; etag: string }

async function putBack(client: string, body: TripBody, etag: string | null): Promise<void> {
  try {
    await saveTrip(client, body, etag);
    say(t('trpPutBack'));
  } catch (error) {
    say(failureWords(failureFrom(error)));
  }
  void refreshAbout(client);
}

/** The trip in the making: changes are kept in memory until they are saved; each step can be taken back. */
export function useTripForm(client: string, trip: Trip, etag: string) {
  const kept = draft(`trip.${client}`);
  const made = kept.value ? (JSON.parse(kept.value) as Kept) : null;
  const form = made?.form ?? formOf(trip);
  const [attempt, setAttempt] = useState(0);
  const { busy, failure, setFailure, run } = useWrite();
  const { problems, body } = bodyOf(form);
  const change = (next: TripForm) => void (kept.value = JSON.stringify({ form: next, etag: made?.etag ?? etag } satisfies Kept));
  const changeAndSay = (next: TripForm, text: string) => {
    const before = kept.value;
    change(next);
    say(text, () => { kept.value = before; say(t('trpPutBack')); });
  };
  const drop = () => { kept.value = ''; dropDraft(`trip.${client}`); setAttempt(0); setFailure(null); };
  const save = async (tag: string) => {
    setAttempt((tries) => tries + 1);
    if (!body) return;
    const before = sentAgain(trip);
    const saved = await run(() => saveTrip(client, body, tag));
    if (!saved) return;
    drop();
    await refreshAbout(client);
    say(t('trpSaved'), () => void putBack(client, before, saved.etag));
  };
  const remove = async () => {
    const before = sentAgain(trip);
    const done = await run(async () => (await removeTrip(client, etag), true));
    if (!done) return;
    drop();
    await refreshAbout(client);
    say(t('trpRemoved'), () => void putBack(client, before, '"0"'));
  };
  return {
    form, busy, attempt,
    failure,
    changed: made !== null,
    isStale: failure?.kind === 'problem' && failure.problem.status === 412,
    problems: attempt > 0 ? problems : {},
    change,
    drop,
    remove,
    save: () => save(made?.etag ?? etag),
    saveOver: () => save(etag),
    addLeg: () => change({ ...form, legs: [...form.legs, emptyLeg(nextDay(form.legs))] }),
    removeLeg: (at: number) => changeAndSay({ ...form, legs: form.legs.filter((_, i) => i !== at) }, t('trpLegRemoved', { n: at + 1 })),
    takeReading: ({ legs }: RouteReading) => changeAndSay({ ...form, legs: legs.map(legForm) }, t('trpReadDone', { n: legs.length })),
  };
}
export type Editing = ReturnType<typeof useTripForm>;
