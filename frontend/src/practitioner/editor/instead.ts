/** Another exercise in the place of a prescribed one: what the library is asked, and how the dose is carried over. Pure. */
import type { Alternative, Prescription, ProgramContent } from '../../shared/program';
import { variantOf, type Entry, type Library, type Variant } from '../exercises/entry';
import { onRung, sessionOf, setPrescription, usualDose } from './edit';
import { TITLE_LETTERS_MAX } from './limits';

/** What the other exercise must do; empty: no wish. */
export interface Wish {
  /** Only what the kit in the house allows. */
  onlyHouse: boolean;
  /** A region of the body that must not be loaded. */
  spare: string;
  /** A quality that must be trained; empty: as the prescribed exercise. */
  trains: string;
}

/** Path of the question. An empty `kit` says that the house has none; without it, whatever is needed. */
export function alternativesPath(one: Prescription, library: Library, house: readonly string[], { onlyHouse, spare, trains }: Wish): string {
  const query = new URLSearchParams();
  if (variantOf(library.get(one.exercise), one.variant)) query.set('variant', one.variant);
  if (onlyHouse) query.set('kit', house.join(','));
  if (spare) query.set('spare', spare);
  if (trains) query.set('trains', trains);
  return `/exercises/${encodeURIComponent(one.exercise)}/alternatives?${query.toString()}`;
}

type Dose = Pick<Prescription, 'reps_low' | 'reps_high' | 'hold_s'>;

/** Repetitions that the other variant's usual range holds are kept, a hold is brought into it; else the usual dose. */
function carried(was: Prescription, rung: Variant): Dose {
  if ('hold_s' in rung.dose) {
    const [low, high] = rung.dose.hold_s;
    return { reps_low: null, reps_high: null, hold_s: was.hold_s === null ? low : Math.min(Math.max(was.hold_s, low), high) };
  }
  const [low, high] = rung.dose.reps;
  const fits = was.reps_low !== null && was.reps_high !== null && low <= was.reps_low && was.reps_high <= high;
  return fits ? { reps_low: was.reps_low, reps_high: was.reps_high, hold_s: null } : usualDose(rung.dose);
}

/** A weight says nothing about another movement; only the pack on the back stays the same pack. */
function load(was: Prescription, before: Variant | undefined, rung: Variant): number | null {
  return before?.kit.includes('pack') && rung.kit.includes('pack') ? was.load_kg : null;
}

/** The other exercise under the same key, so that the client is told what stands instead of what. Rest and note stay. */
export function putInstead(content: ProgramContent, session: string, key: string, library: Library, code: string, variant: string): ProgramContent {
  const was = prescribedAt(content, session, key);
  const rung = variantOf(library.get(code), variant);
  if (!was || !rung) return content;
  const dose = carried(was, rung);
  return setPrescription(content, session, key, {
    alternatives: (was.alternatives ?? []).filter((one) => one.exercise !== code), exercise: code, variant, sides: rung.sides, ...dose,
    load_kg: load(was, variantOf(library.get(was.exercise), was.variant), rung),
    tempo_down_s: dose.hold_s === null ? was.tempo_down_s : null,
  });
}

const prescribedAt = (content: ProgramContent, session: string, key: string): Prescription | undefined => {
  const circuit = sessionOf(content, session);
  return circuit?.kind === 'circuit' ? circuit.prescriptions.find((one) => one.key === key) : undefined;
};

/** As many as the server takes of what may be done instead of one exercise. */
export const ALTERNATIVES_MAX = 3;
export const mayAllow = (one: Prescription, code: string): boolean =>
  (one.alternatives ?? []).length < ALTERNATIVES_MAX && code !== one.exercise && !one.alternatives?.some((each) => each.exercise === code);

/** The other exercise beside this one, for the client to choose, with a dose carried over as far as it fits. */
export function allowInstead(content: ProgramContent, session: string, key: string, library: Library, code: string, variant: string, reason: string): ProgramContent {
  const was = prescribedAt(content, session, key);
  const rung = variantOf(library.get(code), variant);
  if (!was || !rung || !mayAllow(was, code)) return content;
  const load_kg = load(was, variantOf(library.get(was.exercise), was.variant), rung);
  const other: Alternative = { exercise: code, variant, sides: rung.sides, ...carried(was, rung), load_kg, reason: reason.slice(0, TITLE_LETTERS_MAX) };
  return setPrescription(content, session, key, { alternatives: [...(was.alternatives ?? []), other] });
}

/** Changes fields of one of them. */
export function setAllowed(content: ProgramContent, session: string, key: string, code: string, fields: Partial<Alternative>): ProgramContent {
  const all = prescribedAt(content, session, key)?.alternatives ?? [];
  return setPrescription(content, session, key, { alternatives: all.map((one) => (one.exercise === code ? { ...one, ...fields } : one)) });
}

/** Another rung of one of them; its sides are the rung's own. */
export function chooseAllowed(content: ProgramContent, session: string, key: string, entry: Entry, variant: string): ProgramContent {
  const one = prescribedAt(content, session, key)?.alternatives?.find((each) => each.exercise === entry.code);
  const rung = variantOf(entry, variant);
  return one && rung ? setAllowed(content, session, key, entry.code, { sides: rung.sides, ...onRung(one, rung) }) : content;
}

export function removeAllowed(content: ProgramContent, session: string, key: string, code: string): ProgramContent {
  const all = prescribedAt(content, session, key)?.alternatives ?? [];
  return setPrescription(content, session, key, { alternatives: all.filter((one) => one.exercise !== code) });
}
