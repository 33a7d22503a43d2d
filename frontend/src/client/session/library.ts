/** The exercise entries that a program version carries, as far as the phone shows them. */
import type { LibraryExercise, LibraryVariant } from '../../outbox';
import { instead, type Prescription } from '../../shared/program';

export type Variant = LibraryVariant;
export type Exercise = LibraryExercise;

export interface Rungs {
  harder: Variant | null;
  now: Variant | null;
  easier: Variant | null;
}

export const findExercise = (exercises: readonly Exercise[], code: string): Exercise | null =>
  exercises.find((exercise) => exercise.code === code) ?? null;

/** The rung in use with its neighbours; a variant the ladder does not know has none. */
export function rungsAround(exercise: Exercise | null, variant: string): Rungs {
  const at = exercise?.ladder.findIndex((rung) => rung.variant === variant) ?? -1;
  if (!exercise || at < 0) return { harder: null, now: null, easier: null };
  return { harder: exercise.ladder[at + 1] ?? null, now: exercise.ladder[at] ?? null, easier: exercise.ladder[at - 1] ?? null };
}

/**
 * What stands in the place of a prescription today: itself, or an alternative that was taken; and in which variant. One that the
 * program does not allow (any more) does not count.
 */
export function doneToday(prescribed: Prescription, taken: string | undefined): { as: Prescription; variant: string } {
  if (!taken?.includes('/')) return { as: prescribed, variant: taken ?? prescribed.variant };
  const [exercise, variant] = taken.split('/') as [string, string];
  const allowed = prescribed.alternatives?.find((one) => one.exercise === exercise);
  return allowed ? { as: instead(prescribed, allowed), variant } : { as: prescribed, variant: prescribed.variant };
}

/** For an entry: which movement and variant was done. The prescribed movement is not named. */
export function movementDone(prescribed: Prescription, taken: string | undefined): { exercise?: string; variant: string } {
  const { as, variant } = doneToday(prescribed, taken);
  return as.exercise === prescribed.exercise ? { variant } : { exercise: as.exercise, variant };
}

/**
 * The dose with another variant in its place. What was prescribed stays where it fits; a variant that is held instead of counted
 * (or the other way round) brings the low end of its own usual dose, and one without a weight takes none. A harder one may be
 * one-legged: the sides are the variant's.
 */
export function doseFor(prescribed: Prescription, variant: Variant | null): Prescription {
  if (!variant || variant.variant === prescribed.variant) return prescribed;
  const load_kg = variant.load === 'none' ? null : prescribed.load_kg;
  const swapped = { ...prescribed, variant: variant.variant, sides: variant.sides, load_kg };
  const { reps, hold_s } = variant.dose;
  if (hold_s && prescribed.hold_s === null) return { ...swapped, reps_low: null, reps_high: null, tempo_down_s: null, hold_s: hold_s[0] };
  if (reps && prescribed.hold_s !== null) return { ...swapped, reps_low: reps[0], reps_high: reps[1], hold_s: null };
  return swapped;
}
