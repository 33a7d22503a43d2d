/** A pain report while it is being filled in, and what it becomes. */
import { draftKey, events, record, type Bodies, type Event } from '../../../outbox';
import type { Feel, PainWhen } from '../../../outbox/events';
import type { Place } from '../../../shared/body/places';
import { findPlanned, progressFor } from '../../phone';
import { attempt } from '../../session/actions';
import { entriesOf, painOf } from '../../session/log';
import type { Planned } from '../../session/plan';
import { setsOf } from '../../session/progress';

export const WHENS: readonly PainWhen[] = ['before', 'during', 'after', 'next_morning'];
export const FEELS: readonly Feel[] = ['aching', 'sharp', 'burning', 'stiff', 'pinching', 'numb', 'giving_way'];
export const PAIN_DRAFT = 'pain';
export const MORNING_DRAFT = 'pain-morning';

export interface PainDraft {
  place: Place | null;
  rating: number | null;
  when: PainWhen | null;
  feels: Feel[];
  /** Prescription key; null until chosen, '' for none in particular. */
  prescription: string | null;
}
export const EMPTY_PAIN: PainDraft = { place: null, rating: null, when: null, feels: [], prescription: null };

/** What the report is about: a session that runs, or an earlier report that is asked about this morning. */
export interface About {
  planned: Planned | null;
  prescription: string;
  morning: Event | null;
}

export function aboutFrom(query: URLSearchParams): About {
  const planned = findPlanned(query.get('session') ?? '');
  const morning = events.value.find((event) => event.id === query.get('morning')) ?? null;
  return { planned, morning, prescription: query.get('set') ?? lastPrescription(planned) };
}

/** Pain on the page of stones is most likely about the stone laid last. */
function lastPrescription(planned: Planned | null): string {
  if (!planned) return '';
  return String(entriesOf(events.value, planned.planned_id, 'set_ticked').at(-1)?.body.prescription ?? '');
}

/** The movements of a session, each once. */
export function movementsOf(planned: Planned) {
  const seen = new Map(setsOf(planned.session).map(({ prescription }) => [prescription.key, prescription]));
  return [...seen.values()];
}

type Link = Pick<Bodies['pain_reported'], 'planned_id' | 'program_version' | 'prescription' | 'exercise' | 'variant'>;

function linkOf(planned: Planned | null, prescription: string): Link {
  if (!planned) return {};
  const about = { planned_id: planned.planned_id, program_version: planned.version.number };
  const found = movementsOf(planned).find((one) => one.key === prescription);
  if (!found) return about;
  const variant = progressFor(planned.planned_id).swaps[found.key] ?? found.variant;
  return { ...about, prescription: found.key, exercise: found.exercise, variant };
}

const LINKED = ['planned_id', 'program_version', 'prescription', 'exercise', 'variant'] as const;
const linkOfEvent = (event: Event): Link => Object.fromEntries(LINKED.filter((key) => key in event.body).map((key) => [key, event.body[key]]));

export const placeOf = (event: Event): Place => {
  const { region, side, aspect } = painOf(event);
  return { region, side, ...(aspect && { aspect }) } as Place;
};

/** Answers the entry once it is on the phone; null when it could not be stored. */
export async function savePain(draft: PainDraft & { place: Place; rating: number; when: PainWhen }, about: About): Promise<Event | null> {
  const { place, rating, when, feels } = draft;
  const link = about.morning ? linkOfEvent(about.morning) : linkOf(about.planned, draft.prescription ?? about.prescription);
  const body: Bodies['pain_reported'] = { rating, when, ...place, ...(feels.length > 0 && { feels }), ...link };
  let stored: Event | null = null;
  const name = about.morning ? MORNING_DRAFT : PAIN_DRAFT;
  await attempt(async () => {
    stored = await record('pain_reported', body, { [draftKey(name)]: undefined });
  });
  return stored;
}
