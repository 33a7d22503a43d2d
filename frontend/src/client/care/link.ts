/** Which movement a pain report is about. A wrong link would make the wrong movement easier, so it is asked, never guessed. Pure. */
import type { Bodies, Event } from '../../outbox/events';
import type { Prescription } from '../../shared/program';
import { doneToday } from '../session/library';
import type { Planned } from '../session/plan';
import { setsOf } from '../session/progress';

export type Link = Pick<Bodies['pain_reported'], 'planned_id' | 'program_version' | 'prescription' | 'exercise' | 'variant'>;
/** The answer "not one movement, or I do not know". */
export const NO_MOVEMENT = '';

/** The movements of a session, each once, the one just done first. */
export function movementsOf(planned: Planned, justDone: string | null = null): Prescription[] {
  const all = [...new Map(setsOf(planned.session).map(({ prescription }) => [prescription.key, prescription])).values()];
  return [...all.filter((one) => one.key === justDone), ...all.filter((one) => one.key !== justDone)];
}

/** What the entry says of the session and, where one was named, of the movement as it is done today. */
export function linkOf(planned: Planned | null, prescription: string, swaps: Readonly<Record<string, string>>): Link {
  if (!planned) return {};
  const about = { planned_id: planned.planned_id, program_version: planned.version.number };
  const found = movementsOf(planned).find((one) => one.key === prescription);
  if (!found) return about;
  const { as, variant } = doneToday(found, swaps[found.key]);
  // Done instead: the prescribed movement is not what hurt, so it is not named.
  return { ...about, ...(as.exercise === found.exercise && { prescription: found.key }), exercise: as.exercise, variant };
}

const LINKED = ['planned_id', 'program_version', 'prescription', 'exercise', 'variant'] as const;
/** The next morning's answer is about the same movement as the report that it answers. */
export const linkOfEvent = (event: Event): Link => Object.fromEntries(LINKED.filter((key) => key in event.body).map((key) => [key, event.body[key]]));
