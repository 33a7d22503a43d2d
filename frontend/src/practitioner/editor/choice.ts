/** Which day and which session are in view, and what stays in view when the content changes under them. */
import { plannedSessions, type PlannedSession, type ProgramContent, type Session } from '../../shared/program';
import type { LocalDate } from '../../shared/dates';
import { sessionOf } from './edit';

/** A planned day, or a session that is planned on none. */
export interface Choice {
  day: string | null;
  session: string | null;
}
export interface Shown {
  planned: PlannedSession | null;
  session: Session | null;
}

/** The first planned day on or after `date`, else the last one. */
export function firstFrom(content: ProgramContent, date: LocalDate): PlannedSession | null {
  const planned = plannedSessions(content);
  return planned.find((one) => one.day.date >= date) ?? planned.at(-1) ?? null;
}

/** What the choice means in this content; a day that is gone gives way to the next one. */
export function shown(content: ProgramContent, choice: Choice): Shown {
  const planned = choice.day === null ? null : plannedSessions(content).find((one) => one.planned_id === choice.day) ?? null;
  if (planned) return { planned, session: planned.session };
  const alone = choice.session === null ? undefined : sessionOf(content, choice.session);
  if (alone) {
    const day = plannedSessions(content).find((one) => one.session === alone) ?? null;
    return { planned: day, session: alone };
  }
  const next = firstFrom(content, choice.day?.slice(0, 10) ?? content.starts_on);
  return { planned: next, session: next?.session ?? content.sessions[0] ?? null };
}

/** Sessions that no day asks for. */
export function unplanned(content: ProgramContent): Session[] {
  const planned = new Set(content.days.map((day) => day.session));
  return content.sessions.filter((session) => !planned.has(session.key));
}
