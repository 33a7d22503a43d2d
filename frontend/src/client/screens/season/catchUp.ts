/** A session entered on a later day: which sets, on which day, how hard and how long. */
import { draftKey, events, record } from '../../../outbox';
import { isLocalDate, type LocalDate } from '../../../shared/dates';
import { progressFor } from '../../phone';
import { attempt, withdraw } from '../../session/actions';
import { windowOf } from '../../session/day';
import { lastOf } from '../../session/log';
import { movementDone } from '../../session/library';
import type { Planned } from '../../session/plan';
import { setsOf } from '../../session/progress';

export interface CatchUp {
  day: LocalDate;
  /** Set keys. */
  sets: string[];
  effort: number | null;
  minutes: number | null;
}
export const catchUpDraft = (planned_id: string): string => `catch-up.${planned_id}`;

/** The days on which it may have been done: its window, and never after today. */
export function daysFor(planned: Planned, today: LocalDate): [first: LocalDate, last: LocalDate] {
  const [first, last] = windowOf(planned);
  return [first, last < today ? last : today];
}

export function isDayFor(planned: Planned, date: string, today: LocalDate): boolean {
  const [first, last] = daysFor(planned, today);
  return isLocalDate(date) && date >= first && date <= last;
}

/** What differs from what is written already, so that a second try after a full phone says nothing twice. */
async function writeSets(planned: Planned, entry: CatchUp): Promise<void> {
  const about = { planned_id: planned.planned_id, program_version: planned.version.number, day: entry.day };
  for (const { key, prescription, round } of setsOf(planned.session)) {
    const { done, swaps } = progressFor(planned.planned_id);
    const set = { ...about, prescription: prescription.key, round };
    if (entry.sets.includes(key) === done.has(key)) continue;
    if (done.has(key)) await record('set_unticked', set);
    else await record('set_ticked', { ...set, ...movementDone(prescription, swaps[prescription.key]) });
  }
}

export function saveCatchUp(planned: Planned, entry: CatchUp & { effort: number; minutes: number }): Promise<boolean> {
  const { day, effort, minutes } = entry;
  const about = { planned_id: planned.planned_id, program_version: planned.version.number, day };
  return attempt(async () => {
    await writeSets(planned, entry);
    const before = lastOf(events.value, planned.planned_id, 'session_finished');
    await record('session_finished', { ...about, effort, minutes: Math.round(minutes) }, { [draftKey(catchUpDraft(planned.planned_id))]: undefined });
    if (before) await withdraw(before.id);
  });
}
