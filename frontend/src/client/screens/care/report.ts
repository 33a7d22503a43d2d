/** A pain report while it is being filled in, and what it becomes. */
import { draftKey, events, record, type Bodies, type Event } from '../../../outbox';
import type { Feel, PainWhen } from '../../../outbox/events';
import type { Place } from '../../../shared/body/places';
import { linkOf, linkOfEvent, movementsOf } from '../../care/link';
import { findPlanned, progressFor } from '../../phone';
import { attempt } from '../../session/actions';
import { entriesOf, painOf } from '../../session/log';
import type { Planned } from '../../session/plan';

export const WHENS: readonly PainWhen[] = ['before', 'during', 'after', 'next_morning'];
export const FEELS: readonly Feel[] = ['aching', 'sharp', 'burning', 'stiff', 'pinching', 'numb', 'giving_way'];
export const PAIN_DRAFT = 'pain';
export const MORNING_DRAFT = 'pain-morning';

export interface PainDraft {
  place: Place | null;
  rating: number | null;
  when: PainWhen | null;
  feels: Feel[];
  /** The movement that was chosen, and on which page: a choice left behind on another page does not count. */
  movement: { from: string; key: string } | null;
}
export const EMPTY_PAIN: PainDraft = { place: null, rating: null, when: null, feels: [], movement: null };

/** What the report is about: a session, one of its movements, or an earlier report that is asked about this morning. */
export interface About {
  planned: Planned | null;
  /** The page it was opened from. */
  from: string;
  /** Prescription key of the movement's card it was opened from; null from elsewhere. */
  card: string | null;
  /** Prescription key of the stone laid last. */
  justDone: string | null;
  morning: Event | null;
}

export function aboutFrom(query: URLSearchParams): About {
  const planned = findPlanned(query.get('session') ?? '');
  const morning = events.value.find((event) => event.id === query.get('morning')) ?? null;
  const card = planned && movementsOf(planned).find((one) => one.key === query.get('set'));
  const last = planned && entriesOf(events.value, planned.planned_id, 'set_ticked').at(-1);
  return { planned, morning, from: query.toString(), card: card?.key ?? null, justDone: last ? String(last.body.prescription) : null };
}

/** There are movements to choose from. */
export const asksMovement = ({ planned, morning }: About): boolean => morning === null && planned?.session.kind === 'circuit';
/** The movement chosen, NO_MOVEMENT for none of them; null until it is known. */
export const movementOf = (about: About, draft: PainDraft): string | null =>
  draft.movement?.from === about.from ? draft.movement.key : about.card;

export const placeOf = (event: Event): Place => {
  const { region, side, aspect } = painOf(event);
  return { region, side, ...(aspect && { aspect }) } as Place;
};

/** Answers the entry once it is on the phone; null when it could not be stored. */
export async function savePain(draft: PainDraft & { place: Place; rating: number; when: PainWhen }, about: About): Promise<Event | null> {
  const { place, rating, when, feels } = draft;
  const { planned, morning } = about;
  const link = morning ? linkOfEvent(morning) : linkOf(planned, movementOf(about, draft) ?? '', progressFor(planned?.planned_id ?? '').swaps);
  const body: Bodies['pain_reported'] = { rating, when, ...place, ...(feels.length > 0 && { feels }), ...link };
  let stored: Event | null = null;
  await attempt(async () => {
    stored = await record('pain_reported', body, { [draftKey(morning ? MORNING_DRAFT : PAIN_DRAFT)]: undefined });
  });
  return stored;
}
