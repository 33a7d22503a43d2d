/** Edits of the planned days. A planned day is named by its `planned_id`: the date, a dot and its place within that date. */
import { addDays, daysBetween, mondayOf, type LocalDate } from '../../shared/dates';
import { plannedSessions, type Day, type PlannedSession, type ProgramContent } from '../../shared/program';

/** The last day of the program: as given, or the day before the trip; null where neither says. */
export const endOf = (content: ProgramContent): LocalDate | null => content.ends_on ?? (content.goal ? addDays(content.goal.date, -1) : null);

/** Sorted by date; those of one date stay in their order. */
const sorted = (days: readonly Day[]): Day[] => [...days].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));

/** Its place in `days`; -1 when there is none. */
export function placeOf(content: ProgramContent, planned_id: string): number {
  const counted = new Map<LocalDate, number>();
  return content.days.findIndex((day) => {
    const nth = (counted.get(day.date) ?? 0) + 1;
    counted.set(day.date, nth);
    return `${day.date}.${nth}` === planned_id;
  });
}

/** The name of the day at a place of `days`. */
export function idAt(content: ProgramContent, place: number): string | null {
  const day = content.days[place];
  if (!day) return null;
  return `${day.date}.${content.days.slice(0, place + 1).filter((one) => one.date === day.date).length}`;
}

export const onDate = (content: ProgramContent, date: LocalDate): number => content.days.filter((day) => day.date === date).length;

/** Adds a planned session as the last of its date. */
export function addDay(content: ProgramContent, day: Day): ProgramContent {
  return { ...content, days: sorted([...content.days, day]) };
}

export function removeDay(content: ProgramContent, planned_id: string): ProgramContent {
  const place = placeOf(content, planned_id);
  return { ...content, days: content.days.filter((_, i) => i !== place) };
}

/** To another date, there as the last one. */
export function moveDay(content: ProgramContent, planned_id: string, date: LocalDate): ProgramContent {
  const day = content.days[placeOf(content, planned_id)];
  if (!day || day.date === date) return content;
  return addDay(removeDay(content, planned_id), { ...day, date });
}

export function setDay(content: ProgramContent, planned_id: string, fields: Partial<Omit<Day, 'date'>>): ProgramContent {
  const place = placeOf(content, planned_id);
  return { ...content, days: content.days.map((day, i) => (i === place ? { ...day, ...fields } : day)) };
}

export interface Week {
  /** The Monday. */
  monday: LocalDate;
  /** 1 for the week the program starts in; 0 and below for days before it. */
  number: number;
  planned: PlannedSession[];
}

/** Every week from the start to the end, and those beyond that hold a planned day. */
export function weeksOf(content: ProgramContent): Week[] {
  const planned = plannedSessions(content);
  const first = mondayOf(content.starts_on);
  const last = mondayOf(endOf(content) ?? content.starts_on);
  const mondays = new Set(planned.map((one) => mondayOf(one.day.date)));
  for (let at = first; at <= last; at = addDays(at, 7)) mondays.add(at);
  return [...mondays].sort().map((monday) => ({
    monday,
    number: daysBetween(first, monday) / 7 + 1,
    planned: planned.filter((one) => mondayOf(one.day.date) === monday),
  }));
}

/** How many weeks of the program follow this one. */
export function weeksAfter(content: ProgramContent, monday: LocalDate): number {
  const end = endOf(content);
  return end ? Math.max(0, Math.floor(daysBetween(monday, mondayOf(end)) / 7)) : 0;
}

/** Puts this week's days in place of those of the following `weeks`; what would lie outside the program is left out. */
export function repeatWeek(content: ProgramContent, monday: LocalDate, weeks: number): ProgramContent {
  const end = endOf(content);
  const pattern = content.days.filter((day) => mondayOf(day.date) === monday);
  const [from, until] = [addDays(monday, 7), addDays(monday, 7 * (weeks + 1))];
  const kept = content.days.filter((day) => day.date < from || day.date >= until);
  const copies = Array.from({ length: weeks }, (_, i) => pattern.map((day) => ({ ...day, date: addDays(day.date, 7 * (i + 1)) }))).flat();
  return { ...content, days: sorted([...kept, ...copies.filter((day) => end === null || day.date <= end)]) };
}
