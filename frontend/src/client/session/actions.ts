/** What a tap does. Each writes its entry first; the page shows it only when it is on the phone. */
import { signal } from '@preact/signals';
import { PhoneFull, record, recordAll, type Bodies, type Entry, type EventKind } from '../../outbox';
import type { LeftOutReason } from '../../outbox/events';
import { progressFor } from '../phone';
import { prepareSound } from './alerts';
import type { Prescription } from '../../shared/program';
import { movementDone } from './library';
import type { Planned } from './plan';
import { setsOf, type SetPlace } from './progress';
import { endRest, rest, restAfter } from './rest';

/** Why the last tap was not saved; null after one that was. */
export const trouble = signal<null | 'not_saved' | 'full'>(null);

/** Runs something that stores; answers whether it is stored. A storage failure is shown, everything else is a fault of ours. */
export async function attempt(work: () => Promise<unknown>): Promise<boolean> {
  try {
    await work();
    trouble.value = null;
    return true;
  } catch (error) {
    trouble.value = error instanceof PhoneFull ? 'full' : 'not_saved';
    return false;
  }
}

export const put = <K extends EventKind>(kind: K, body: Bodies[K], also?: Record<string, unknown>): Promise<boolean> =>
  attempt(() => record(kind, body, also));

const about = (planned: Planned) => ({ planned_id: planned.planned_id, program_version: planned.version.number });
const ofSet = (planned: Planned, set: SetPlace) => ({ ...about(planned), prescription: set.prescription.key, round: set.round });

/** The movement as it is done in a session today. */
const movementIn = (planned: Planned, one: Prescription) => movementDone(one, progressFor(planned.planned_id).swaps[one.key]);

/** The first thing done in a session says which version it is done under. */
const begin = (planned: Planned): Entry[] =>
  progressFor(planned.planned_id).program_version === null ? [{ kind: 'session_started', body: about(planned) }] : [];

export interface Really {
  reps?: number;
  hold_s?: number;
  load_kg?: number;
}
/** Sets whose entry is being written: a second tap in that moment is a slip of the finger. */
const busy = new Set<string>();

async function once(planned: Planned, set: SetPlace, work: () => Promise<boolean>): Promise<boolean> {
  const name = `${planned.planned_id} ${set.key}`;
  if (busy.has(name)) return false;
  busy.add(name);
  return work().finally(() => busy.delete(name));
}

/** The rest that follows a set: none after the last. */
function restOf(planned: Planned, set: SetPlace): number {
  return set.index === setsOf(planned.session).length - 1 ? 0 : (set.prescription.rest_s ?? 0);
}

export function lay(planned: Planned, set: SetPlace, really: Really = {}): Promise<boolean> {
  const done = movementIn(planned, set.prescription);
  const next = restAfter(restOf(planned, set), planned.planned_id);
  return once(planned, set, () =>
    attempt(async () => {
      await recordAll([...begin(planned), { kind: 'set_ticked', body: { ...ofSet(planned, set), ...done, ...really } }], next.also);
      next.begin();
      setTimeout(prepareSound); // still of this tap, but making ready takes longer than saving: the stone is drawn first
    }),
  );
}

export function takeUp(planned: Planned, set: SetPlace): Promise<boolean> {
  return once(planned, set, async () => {
    const done = await put('set_unticked', ofSet(planned, set));
    if (done && rest.value) endRest();
    return done;
  });
}

/** A tap on a stone. */
export const press = (planned: Planned, set: SetPlace): Promise<boolean> =>
  progressFor(planned.planned_id).done.has(set.key) ? takeUp(planned, set) : lay(planned, set);

export const leaveOut = (planned: Planned, set: SetPlace, reason: LeftOutReason): Promise<boolean> =>
  once(planned, set, () =>
    attempt(async () => {
      const { exercise } = movementIn(planned, set.prescription);
      await recordAll([...begin(planned), { kind: 'set_left_out', body: { ...ofSet(planned, set), ...(exercise && { exercise }), reason } }]);
    }),
  );

/** Every set of a movement that is still open, left out because it hurts. Answers how many were. */
export async function leaveOutMovement(planned: Planned, prescription: string): Promise<number> {
  let count = 0;
  const { done, left_out } = progressFor(planned.planned_id);
  for (const set of setsOf(planned.session)) {
    if (set.prescription.key !== prescription || done.has(set.key) || left_out.has(set.key)) continue;
    if (!(await leaveOut(planned, set, 'pain'))) break;
    count += 1;
  }
  return count;
}

/** Takes another way, or with `exercise` another movement that is allowed instead. Without it, it is the prescribed movement again. */
export const swap = (planned: Planned, prescription: string, from_variant: string, to_variant: string, exercise?: string): Promise<boolean> =>
  attempt(async () => {
    const body = { ...about(planned), prescription, from_variant, to_variant, ...(exercise && { exercise }) };
    await recordAll([...begin(planned), { kind: 'variant_swapped', body }]);
  });

/** Takes an entry back: it stays in the log, and counts for nothing. */
export const withdraw = (event_id: string): Promise<boolean> => put('entry_withdrawn', { event_id });
