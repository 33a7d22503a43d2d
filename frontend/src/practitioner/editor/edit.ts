/**
 * Edits of sessions and prescriptions. Pure: each takes a content and answers a new one; what was not touched stays the same object.
 * Keys are given once and never change; `taken` holds those of the published version, so that a key never comes to mean something else.
 */
import type { Circuit, Prescription, ProgramContent, Session } from '../../shared/program';
import { variantOf, type Entry, type Usual, type Variant } from '../exercises/entry';

export type Kind = Session['kind'];

/** Seconds of rest for the first exercise of a session; each further one takes over that of the one before. House: a starting value. */
export const REST_START_S = 45;
/** Expected effort of a new session, 0 to 10. House: the middle of the scale, to be decided for each. */
export const EFFORT_START = 5;
/** House: starting values of a new circuit and a new walk. */
export const ROUNDS_START = 3;
export const DISTANCE_START_KM = 5;

export const sessionOf = (content: ProgramContent, key: string): Session | undefined => content.sessions.find((one) => one.key === key);

const prescriptionsOf = (session: Session): readonly Prescription[] => (session.kind === 'circuit' ? session.prescriptions : []);

/** Every key of the program: sessions and prescriptions. */
export function keysOf(content: ProgramContent | null): string[] {
  return (content?.sessions ?? []).flatMap((session) => [session.key, ...prescriptionsOf(session).map((one) => one.key)]);
}

/** The next free key: `s4` after `s1` and `s3`. */
export function freshKey(prefix: 's' | 'p', taken: Iterable<string>): string {
  const pattern = new RegExp(`^${prefix}(\\d{1,9})$`);
  const numbers = [...taken].map((key) => Number(pattern.exec(key)?.[1] ?? 0));
  return `${prefix}${Math.max(0, ...numbers) + 1}`;
}

function changeSession(content: ProgramContent, key: string, change: (session: Session) => Session): ProgramContent {
  return { ...content, sessions: content.sessions.map((one) => (one.key === key ? change(one) : one)) };
}

function changeCircuit(content: ProgramContent, key: string, change: (list: readonly Prescription[]) => Prescription[]): ProgramContent {
  return changeSession(content, key, (one) => (one.kind === 'circuit' ? { ...one, prescriptions: change(one.prescriptions) } : one));
}

type Fields<S> = S extends unknown ? Partial<Omit<S, 'key' | 'kind' | 'prescriptions'>> : never;

/** Sets fields of a session; its key, kind and exercises have their own edits. */
export function setSession(content: ProgramContent, key: string, fields: Fields<Session>): ProgramContent {
  return changeSession(content, key, (one) => ({ ...one, ...fields }) as Session);
}

export function blankSession(kind: Kind, key: string, name: string): Session {
  const effortful = { key, name, note: '', expected_effort: EFFORT_START, expected_minutes: null };
  switch (kind) {
    case 'circuit': return { ...effortful, kind, rounds: ROUNDS_START, prescriptions: [] };
    case 'walk': return { ...effortful, kind, distance_km: DISTANCE_START_KM, ascent_m: 0, descent_m: 0, pack_kg: 0 };
    case 'cardio': return { ...effortful, kind, activity: '' };
    case 'rest': return { key, name, note: '', kind };
  }
}

export function addSession(content: ProgramContent, session: Session): ProgramContent {
  return { ...content, sessions: [...content.sessions, session] };
}

/** Another kind of session under the same key: name, note, effort and minutes are taken over, the rest begins anew. */
export function changeKind(content: ProgramContent, key: string, kind: Kind): ProgramContent {
  return changeSession(content, key, (one) => {
    if (one.kind === kind) return one;
    const next = { ...blankSession(kind, key, one.name), note: one.note } as Session;
    if (next.kind === 'rest' || one.kind === 'rest') return next;
    return { ...next, expected_effort: one.expected_effort, expected_minutes: one.expected_minutes };
  });
}

/** Takes a session out, with every day it was planned on. */
export function removeSession(content: ProgramContent, key: string): ProgramContent {
  return { ...content, sessions: content.sessions.filter((one) => one.key !== key), days: content.days.filter((day) => day.session !== key) };
}

function withFreshKeys(session: Circuit, taken: readonly string[]): Circuit {
  const used = [...taken];
  const prescriptions = session.prescriptions.map((one) => {
    const key = freshKey('p', used);
    used.push(key);
    return { ...one, key };
  });
  return { ...session, prescriptions };
}

/** A copy with keys of its own, put behind the first; the days that `moves` picks out (by their place in `days`) go over to it. */
export function copySession(content: ProgramContent, key: string, as: { key: string; name: string }, taken: readonly string[], moves: (place: number) => boolean): ProgramContent {
  const source = sessionOf(content, key);
  if (!source) return content;
  const renamed: Session = { ...source, ...as };
  const copy = renamed.kind === 'circuit' ? withFreshKeys(renamed, [...keysOf(content), ...taken]) : renamed;
  const sessions = content.sessions.flatMap((one) => (one.key === key ? [one, copy] : [one]));
  return { ...content, sessions, days: content.days.map((day, place) => (day.session === key && moves(place) ? { ...day, session: as.key } : day)) };
}

type Dose = Pick<Prescription, 'reps_low' | 'reps_high' | 'hold_s'>;

/** The usual dose of a variant; of a hold, the shorter end. */
export function usualDose(usual: Usual): Dose {
  if ('reps' in usual) return { reps_low: usual.reps[0], reps_high: usual.reps[1], hold_s: null };
  return { reps_low: null, reps_high: null, hold_s: usual.hold_s[0] };
}

/** A prescription of one variant with its usual dose. */
export function prescribe(entry: Entry, variant: string, key: string, rest_s = REST_START_S): Prescription {
  const rung = variantOf(entry, variant) ?? entry.ladder[0]!;
  return { key, exercise: entry.code, variant: rung.variant, sides: entry.sides, ...usualDose(rung.dose), load_kg: null, tempo_down_s: null, rest_s, note: '' };
}

export function addPrescription(content: ProgramContent, session: string, one: Prescription): ProgramContent {
  return changeCircuit(content, session, (list) => [...list, one]);
}

export function setPrescription(content: ProgramContent, session: string, key: string, fields: Partial<Omit<Prescription, 'key'>>): ProgramContent {
  return changeCircuit(content, session, (list) => list.map((one) => (one.key === key ? { ...one, ...fields } : one)));
}

/** What another rung makes of a dose. It stays; it begins anew only where repetitions turn into a hold or the other way round. No weight where none is used. */
export function onRung(one: Dose, rung: Variant): Partial<Dose> & { variant: string; load_kg?: null } {
  const sameDose = 'hold_s' in rung.dose === (one.hold_s !== null);
  return { variant: rung.variant, ...(sameDose ? {} : usualDose(rung.dose)), ...(rung.load === 'none' ? { load_kg: null } : {}) };
}

/** Another rung of a prescription. */
export function chooseVariant(content: ProgramContent, session: string, key: string, entry: Entry, variant: string): ProgramContent {
  const rung = variantOf(entry, variant);
  if (!rung) return content;
  return changeCircuit(content, session, (list) => list.map((one) => (one.key === key ? { ...one, ...onRung(one, rung) } : one)));
}

export function removePrescription(content: ProgramContent, session: string, key: string): ProgramContent {
  return changeCircuit(content, session, (list) => list.filter((one) => one.key !== key));
}

/** One place up (-1) or down (+1); at the end of the list nothing happens. */
export function movePrescription(content: ProgramContent, session: string, key: string, by: -1 | 1): ProgramContent {
  return changeCircuit(content, session, (list) => {
    const from = list.findIndex((one) => one.key === key);
    const [one, other] = [list[from], list[from + by]];
    if (!one || !other) return [...list];
    return list.map((each) => (each === one ? other : each === other ? one : each));
  });
}
