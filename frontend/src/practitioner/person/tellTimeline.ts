/** What the phone said as sentences, by day, newest first: pure. Ticks of one session on one day are told as one. */
import { placeTitle, type Place } from '../../shared/body/places';
import { dayShort, dayWritten, type LocalDate } from '../../shared/dates';
import { distance, height, mass } from '../../shared/units';
import type { PainWhen, TimelineItem } from '../api/types';
import { capital } from '../parts/counts';
import { t } from '../words';

export interface ToldDay { day: LocalDate; sentences: { id: string; at: string; text: string }[] }
/** Names of planned sessions by `planned_id`, as far as they are known. */
export type Names = ReadonlyMap<string, string>;

/** Kinds told together when they follow one another on the same day about the same session. */
const TOGETHER = { set_ticked: 'told_sets', set_unticked: 'told_set_unticked', set_left_out: 'told_set_left_out' } as const;
const isTogether = (kind: string): kind is keyof typeof TOGETHER => kind in TOGETHER;

type Body = Record<string, unknown>;
const text = (body: Body, field: string): string => String(body[field] ?? '');
const number = (body: Body, field: string): number => Number(body[field] ?? 0);

function sessionWords(body: Body, names: Names): string {
  const id = text(body, 'planned_id');
  if (!id) return t('sessionFree');
  return names.get(id) ?? t('sessionOf', { day: dayShort(id.slice(0, 10)) });
}

const plain = (code: string): string => code.replaceAll('-', ' ');
/** Names what was done in the place of the prescribed movement. */
const withMovement = (told: string, body: Body): string => (body.exercise ? `${told} ${t('told_instead', { exercise: plain(text(body, 'exercise')) })}` : told);

/** One entry, or several of a kind that is told together. */
export function tell(item: TimelineItem, n: number, names: Names): string {
  const { kind, body } = item;
  const session = sessionWords(body, names);
  switch (kind) {
    case 'set_ticked': return withMovement(t('told_sets', { n, session }), body);
    case 'set_unticked': return t('told_set_unticked', { n, session });
    case 'set_left_out': return withMovement(t('told_set_left_out', { n, session, reason: t(`reason_${body.reason as 'pain'}`) }), body);
    case 'session_started': return capital(t('told_session_started', { session }));
    case 'variant_swapped': return body.exercise ? t('told_movement_swapped', { session, exercise: plain(text(body, 'exercise')), variant: plain(text(body, 'to_variant')) }) : t('told_variant_swapped', { session, variant: text(body, 'to_variant') });
    case 'session_finished': return capital(t('told_session_finished', { session, effort: number(body, 'effort'), minutes: number(body, 'minutes') }));
    case 'walk_logged': return t('told_walk_logged', {
      distance: distance(number(body, 'distance_km')), ascent: height(number(body, 'ascent_m')), descent: height(number(body, 'descent_m')),
      minutes: number(body, 'minutes'), pack: mass(number(body, 'pack_kg')),
    });
    case 'pain_reported': return t('told_pain_reported', { place: placeTitle(body as unknown as Place), rating: number(body, 'rating'), when: t(`when_${body.when as PainWhen}`) });
    case 'symptom_reported': return [t('told_symptom_reported', { symptom: t(`symptom_${body.symptom as 'fever'}`) }), text(body, 'note')].filter(Boolean).join(' ');
    case 'note_written': return t('told_note_written', { text: text(body, 'text') });
    case 'entry_withdrawn': return t('told_entry_withdrawn');
    case 'message_read': return t('told_message_read');
    default: return t('told_other', { kind });
  }
}

const groupKey = ({ kind, local_date, body }: TimelineItem) => [kind, local_date, body.planned_id, body.exercise, kind === 'set_left_out' ? body.reason : ''].join('|');

/** Runs of entries that are told as one sentence. */
function runs(items: readonly TimelineItem[]): TimelineItem[][] {
  const found: TimelineItem[][] = [];
  for (const item of items) {
    const last = found.at(-1);
    if (last?.[0] && isTogether(item.kind) && groupKey(last[0]) === groupKey(item)) last.push(item);
    else found.push([item]);
  }
  return found;
}

export function tellTimeline(items: readonly TimelineItem[], names: Names): ToldDay[] {
  const days = new Map<LocalDate, ToldDay>();
  for (const run of runs(items)) {
    const first = run[0] as TimelineItem;
    const day = days.get(first.local_date) ?? { day: first.local_date, sentences: [] };
    day.sentences.unshift({ id: first.event_id ?? first.at, at: first.at, text: tell(first, run.length, names) });
    days.set(first.local_date, day);
  }
  return [...days.values()].sort((a, b) => b.day.localeCompare(a.day));
}

/** Entries newest first, as far as they have been read; `next` leads to earlier ones, null at the beginning of all. */
export interface Heard { items: readonly TimelineItem[]; next: string | null }

/**
 * The days that are told whole. Those up to the day of the oldest entry read may have more to come; so may an earlier day that a
 * catch-up entry tells of.
 */
export function wholeDays({ items, next }: Heard, names: Names): ToldDay[] {
  const days = tellTimeline([...items].reverse(), names);
  const oldest = items.at(-1);
  return next !== null && oldest ? days.filter(({ day }) => day > dayWritten(oldest.at)) : days;
}
