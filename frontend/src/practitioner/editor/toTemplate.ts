/** A program without its dates. */
import { daysBetween, isoWeekday } from '../../shared/dates';
import type { ProgramContent } from '../../shared/program';
import { same } from './same';
import { WEEKDAYS, type TemplateBody, type TemplateDay } from './types';

/** Weeks that a template holds. */
export const WEEKS_MAX = 52;

function weeksFrom(content: ProgramContent): TemplateDay[][] {
  const weeks: TemplateDay[][] = [];
  for (const day of content.days) {
    const week = Math.floor(daysBetween(content.starts_on, day.date) / 7);
    if (week < 0 || week >= WEEKS_MAX) continue;
    while (weeks.length <= week) weeks.push([]);
    weeks[week]?.push({ weekday: WEEKDAYS[isoWeekday(day.date) - 1] ?? 'mon', session: day.session, fixed_day: day.fixed_day });
  }
  return weeks;
}

/** Weeks count from the first day of the program. Like weeks at the end become one, since the last one repeats. */
export function toTemplate(content: ProgramContent, name: string, about: string): TemplateBody {
  const weeks = weeksFrom(content);
  while (weeks.length > 1 && same(weeks.at(-1), weeks.at(-2))) weeks.pop();
  const used = new Set(weeks.flat().map((day) => day.session));
  return { name, about, sessions: content.sessions.filter((session) => used.has(session.key)), weeks };
}
