/** Questions about the phone's own entries. All are pure and do not depend on the order of the list. */
import { addDays, type LocalDate } from '../../shared/dates';
import type { Event } from '../../outbox/events';
import { dayOf, standing } from '../../outbox/fold';

const instant = (entry: Event): number => Date.parse(entry.recorded_at);

/** Entries of a planned session that still stand, in the order they were made. */
export const entriesOf = (events: readonly Event[], planned_id: string, ...kinds: string[]): Event[] =>
  standing(events).filter((event) => event.body.planned_id === planned_id && kinds.includes(event.kind));

export const lastOf = (events: readonly Event[], planned_id: string, kind: string): Event | null =>
  entriesOf(events, planned_id, kind).at(-1) ?? null;

/** A gap between two stones longer than this is a break, not training: it counts as this long. House value, minutes. */
export const LONGEST_GAP_MIN = 20;

/** Whole minutes from the first stone to the last, long breaks cut short; null while there is nothing to go by. */
export function minutesFromStones(events: readonly Event[], planned_id: string): number | null {
  const own = entriesOf(events, planned_id, 'set_ticked', 'session_started').filter((event) => event.body.day === undefined);
  if (own.length < 2) return null;
  const at = own.map(instant);
  const gaps = at.slice(1).map((time, i) => Math.min(time - (at[i] as number), LONGEST_GAP_MIN * 60_000));
  return Math.max(1, Math.round(gaps.reduce((sum, gap) => sum + gap, 0) / 60_000));
}

interface PainBody { rating: number; region: string; side: string; when: string; aspect?: string }
export const painOf = (event: Event): PainBody => event.body as unknown as PainBody;

const placeKey = (event: Event): string => [painOf(event).region, painOf(event).side, painOf(event).aspect ?? ''].join('/');

/**
 * The places to ask about this morning: each place with pain of 1 or more during or after training on the day before, by its
 * strongest report, unless it was answered today.
 */
export function morningQuestions(events: readonly Event[], today: LocalDate, yesterday: LocalDate): Event[] {
  const pains = standing(events).filter((event) => event.kind === 'pain_reported');
  const answered = new Set(pains.filter((pain) => dayOf(pain) === today && painOf(pain).when === 'next_morning').map(placeKey));
  const worst = new Map<string, Event>();
  for (const pain of pains) {
    const { rating, when } = painOf(pain);
    if (dayOf(pain) !== yesterday || rating < 1 || (when !== 'during' && when !== 'after')) continue;
    const known = worst.get(placeKey(pain));
    if (!known || painOf(known).rating < rating) worst.set(placeKey(pain), pain);
  }
  return [...worst.entries()].filter(([place]) => !answered.has(place)).map(([, pain]) => pain);
}

/** The strongest rating at the place of a report, during or after training on the day before it; 0 when none was told. */
export function painBefore(events: readonly Event[], morning: Event): number {
  const before = addDays(dayOf(morning), -1);
  const same = standing(events).filter(
    (event) => event.kind === 'pain_reported' && dayOf(event) === before && placeKey(event) === placeKey(morning) && ['during', 'after'].includes(painOf(event).when),
  );
  return Math.max(0, ...same.map((event) => painOf(event).rating));
}

/** What the person typed of a set, beside the plan: newest tick that stands. */
export function reallyDone(events: readonly Event[], planned_id: string, prescription: string, round: number): Event | null {
  return entriesOf(events, planned_id, 'set_ticked')
    .filter((event) => event.body.prescription === prescription && event.body.round === round).at(-1) ?? null;
}
