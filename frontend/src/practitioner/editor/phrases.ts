/** Short facts in words: of a session, of a planned week, of a dose. */
import { doseWords } from '../../shared/dose';
import { instead, type Prescription, type Session } from '../../shared/program';
import { distance, height, mass } from '../../shared/units';
import { variantOf, type Library } from '../exercises/entry';
import { e } from './words';

export const sessionName = (session: Session): string => session.name || e('unnamedSession');

/** "3 rounds of 4", "11 km, 520 m up, pack 6 kg". */
export function facts(session: Session): string {
  if (session.kind === 'circuit') return e('factsCircuit', { n: session.rounds, exercises: session.prescriptions.length });
  if (session.kind === 'cardio') return session.activity || e('kind_cardio');
  if (session.kind === 'rest') return e('kind_rest');
  const parts = [distance(session.distance_km)];
  if (session.ascent_m) parts.push(e('factsUp', { height: height(session.ascent_m) }));
  if (session.descent_m) parts.push(e('factsDown', { height: height(session.descent_m) }));
  if (session.pack_kg) parts.push(e('factsPack', { mass: mass(session.pack_kg) }));
  return parts.join(', ');
}

export const exerciseName = (one: Prescription, library: Library): string => library.get(one.exercise)?.name ?? one.exercise;
export const variantName = (one: Prescription, library: Library): string => variantOf(library.get(one.exercise), one.variant)?.name ?? one.variant;

const restWords = (one: Prescription): string => (one.rest_s ? e('restWords', { seconds: one.rest_s }) : e('noRest'));
const hasDose = (one: Prescription): boolean => one.hold_s !== null || one.reps_low !== null;
const doseOrOpen = (one: Prescription): string => (hasDose(one) ? doseWords(one) : e('openDose'));

/** "or instead Squat, free, 6 to 8", once for each that is allowed. */
export const insteadWords = (one: Prescription, library: Library): string =>
  (one.alternatives ?? []).map((each) => instead(one, each)).map((other) =>
    e('orInstead', { what: `${exerciseName(other, library)}, ${variantName(other, library)}, ${doseOrOpen(other)}` })).join(', ');

/** "20 cm, 8 to 10 each side, rest 45 s" with its note. */
export function prescriptionWords(one: Prescription, library: Library): string {
  return [variantName(one, library), doseOrOpen(one), restWords(one), one.note, insteadWords(one, library)].filter(Boolean).join(', ');
}

/** What the published version said where this one says otherwise; null where they agree. */
export function wasWords(was: Prescription, now: Prescription, library: Library): string | null {
  const parts = [
    was.exercise !== now.exercise ? exerciseName(was, library) : '',
    was.variant !== now.variant ? variantName(was, library) : '',
    doseOrOpen(was) !== doseOrOpen(now) ? doseOrOpen(was) : '',
    was.rest_s !== now.rest_s ? restWords(was) : '',
    was.note !== now.note ? was.note || e('noNote') : '',
    insteadWords(was, library) !== insteadWords(now, library) ? insteadWords(was, library) || e('noInstead') : '',
  ];
  return parts.filter(Boolean).join(', ') || null;
}
