/** Names as a person reads them, out of the codes that a program carries. */
import { addDays, dayAndMonth, dayName } from '../../shared/dates';
import type { Prescription, Session } from '../../shared/program';
import { distance, height, mass } from '../../shared/units';
import { doneToday, findExercise } from '../session/library';
import type { Planned } from '../session/plan';
import { day } from '../phone';
import type { Progress } from '../session/progress';
import { t } from '../words';

const plain = (code: string): string => code.replaceAll('-', ' ');
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "Step-down"; the code in plain letters when the version came without its texts. */
export const exerciseName = (planned: Planned, { exercise }: Pick<Prescription, 'exercise'>): string =>
  findExercise(planned.version.exercises, exercise)?.name ?? capital(plain(exercise));

/** The name of the movement that is done today, which may be one that is allowed instead. */
export const nameToday = (planned: Planned, one: Prescription, { swaps }: Pick<Progress, 'swaps'>): string =>
  exerciseName(planned, doneToday(one, swaps[one.key]).as);

export function variantName(planned: Planned, { exercise }: Pick<Prescription, 'exercise'>, variant: string): string {
  const entry = findExercise(planned.version.exercises, exercise);
  return entry?.ladder.find((rung) => rung.variant === variant)?.name ?? plain(variant);
}

export const kitWords = (kit: readonly string[]): string => kit.map((one) => t(`kit_${one}` as 'kit_chair')).join(', ');

/** "11 km, 520 m up, 480 m down, pack 6 kg" */
export function walkWords(walk: { distance_km: number; ascent_m: number; descent_m: number; pack_kg: number }): string {
  return t('walkPlan', {
    distance: distance(walk.distance_km), up: height(walk.ascent_m), down: height(walk.descent_m), pack: mass(walk.pack_kg),
  });
}

/** Under a session's name in a list. */
export function sessionNote(session: Session): string {
  if (session.kind === 'walk') return walkWords(session);
  if (session.kind === 'rest') return session.note;
  const minutes = session.expected_minutes === null ? '' : t('aboutMinutes', { n: session.expected_minutes });
  if (session.kind === 'cardio') return [session.activity, minutes].filter(Boolean).join(', ');
  return [t('roundSets', { n: session.rounds * session.prescriptions.length }), minutes].filter(Boolean).join(', ');
}

/** "Friday"; with the date when it is farther than a week. */
export function dayWords(date: string): string {
  return date < addDays(day.value, 7) && date > addDays(day.value, -7) ? dayName(date, 'long') : `${dayName(date, 'long')} ${dayAndMonth(date)}`;
}

const BECAUSE = {
  pain: 'becausePain', too_hard: 'becauseTooHard', no_time: 'becauseNoTime', no_kit: 'becauseNoKit', other: 'becauseOther',
} as const;
export const because = (reason: string): string => t(BECAUSE[reason as keyof typeof BECAUSE] ?? 'becauseOther');

/** Path of a session's page and of what belongs to it. */
export const sessionPath = (planned_id: string): string => `/do/${planned_id}`;
export const setPath = (planned_id: string, prescription: string, round: number): string => `/do/${planned_id}/${prescription}/${round}`;

/** "effort 6, 41 minutes" */
export function answersWords({ minutes, effort }: Pick<Progress, 'minutes' | 'effort'>): string {
  return [effort === null ? '' : t('effortNumber', { effort }), minutes === null ? '' : t('minutesDone', { n: minutes })].filter(Boolean).join(', ');
}
