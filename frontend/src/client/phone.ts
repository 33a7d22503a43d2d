/** What the pages read of this phone: the outbox's signals, joined into the plan and how far each session has come. */
import { computed, signal } from '@preact/signals';
import { addDays, daysBetween, dayAndTime, mondayOf, time, today } from '../shared/dates';
import { answers, device, earlier, events, isReceived, lastReceivedAt, olderPrograms, practice, program, sessions, settings, waitingSince, type Event } from '../outbox';
import { dayOf } from '../outbox/fold';
import { painThresholds } from './care/advice';
import { clearedOf, locksOf } from './care/lock';
import { lastScreening } from './care/screening';
import { since } from './season/since';
import { dayPlan, progressIn } from './session/day';
import { wholePlan, type Planned, type Version } from './session/plan';
import { progressOf, type Progress } from './session/progress';

/** Moves on with each minute and whenever the page is seen again: a phone app is left open over midnight. */
export const now = signal(new Date());
export const day = computed(() => today(now.value));

export function watchTime(): void {
  const look = () => (now.value = new Date());
  setInterval(look, 30_000);
  document.addEventListener('visibilitychange', look);
}

export const progress = computed<ReadonlyMap<string, Progress>>(
  () => new Map([...sessions.value].map(([id, state]) => [id, progressOf(state)])),
);
export const progressFor = (planned_id: string): Progress => progressIn(progress.value)(planned_id);

/** Newest first. */
export const versions = computed<Version[]>(() => [program.value, ...olderPrograms.value].filter((one) => one !== null));
/** As text, which is equal as long as no session was begun: so the whole plan is not laid out again at each stone. */
const begunUnder = computed(() => JSON.stringify([...progress.value].map(([id, { program_version }]) => [id, { program_version }])));
export const plan = computed(() => wholePlan(versions.value, new Map(JSON.parse(begunUnder.value) as [string, { program_version: number | null }][])));
export const findPlanned = (planned_id: string): Planned | null => plan.value.find((planned) => planned.planned_id === planned_id) ?? null;
/** Of a day before this phone knows anything it is not said that something is still open. */
export const dayNow = computed(() => {
  const found = dayPlan(program.value?.content ?? null, plan.value, progressIn(progress.value), day.value);
  return { ...found, open: found.open.filter((planned) => planned.day.date >= since.value) };
});
/** Some of what is shown of it was said on an earlier phone of this person. */
export const isFromEarlier = (planned_id: string): boolean => earlier.value.has(planned_id);

/** Before the practice has said more, what the pairing told. */
export const practiceName = computed(() => practice.value?.name ?? device.value?.practice_name ?? '');
export const practitioner = computed(() => practice.value?.practitioner ?? device.value?.practitioner_name ?? '');
/** "Maren", as one speaks of her; the whole name stands on Practice. */
export const firstName = computed(() => practitioner.value.split(' ')[0] ?? '');
export const thresholds = computed(() => painThresholds(settings.value?.thresholds));

/** Reports of a sign that stop training now; nobody trains while there is one. */
export const locks = computed(() => locksOf(events.value, answers.value));
export const cleared = computed(() => clearedOf(events.value, answers.value));

/** The health answers that count. */
export const screening = computed(() => lastScreening(events.value));

/** "18:09" today, "Wed 18:09" before. */
export const whenWords = (at: string): string => (today(new Date(at)) === day.value ? time(at) : dayAndTime(at));
export const lastContact = computed(() => (lastReceivedAt.value ? whenWords(lastReceivedAt.value) : null));
export const silentDays = computed(() => (waitingSince.value ? daysBetween(waitingSince.value.slice(0, 10), day.value) : 0));

/** How many laid stones are on this phone and how many of them the practice holds: of one session, or of the running week. */
export function keptSets(planned_id: string | null): { saved: number; received: number } {
  const monday = mondayOf(day.value);
  const laid = new Map<string, Event>();
  for (const event of events.value) {
    const { body } = event;
    const counts = planned_id ? body.planned_id === planned_id : dayOf(event) >= monday && dayOf(event) <= addDays(monday, 6);
    if (event.kind !== 'set_ticked' || !counts) continue;
    if (progressFor(String(body.planned_id)).done.has(`${String(body.prescription)}/${String(body.round)}`)) {
      laid.set(`${String(body.planned_id)} ${String(body.prescription)} ${String(body.round)}`, event);
    }
  }
  return { saved: laid.size, received: [...laid.values()].filter(isReceived).length };
}

/** How many stones lie that only an earlier phone laid. */
export const stonesFromEarlier = (planned_id: string): number => progressFor(planned_id).done.size - keptSets(planned_id).saved;
