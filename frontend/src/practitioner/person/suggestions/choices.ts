/** What is about to be decided about suggestions: pure. */
import type { Prescription } from '../../../shared/program';
import { parseNumber } from '../../../shared/numbers';
import { toShown, toSi } from '../../../shared/units';
import type { Choice, Suggestion } from '../../api/types';
import { LIMITS, within, type Range } from '../../editor/limits';

/** One thing to decide. An easier week is of a whole circuit: its movements are decided together. */
export interface Ready { first: Suggestion; all: readonly Suggestion[] }

export function readyOnes(items: readonly Suggestion[]): Ready[] {
  const found = new Map<string, Suggestion[]>();
  for (const one of items.filter(({ can_accept }) => can_accept)) {
    const key = one.suggestion === 'deload' ? `deload.${one.session}` : one.id;
    found.set(key, [...(found.get(key) ?? []), one]);
  }
  return [...found.values()].map((all) => ({ first: all[0] as Suggestion, all }));
}

export const DOSE_FIELDS = ['reps_low', 'reps_high', 'hold_s', 'load_kg', 'rest_s'] as const;
export type DoseField = (typeof DOSE_FIELDS)[number];
export type Typed = Partial<Record<DoseField, string>>;
const RANGES = { reps_low: LIMITS.reps, reps_high: LIMITS.reps, hold_s: LIMITS.hold_s, load_kg: LIMITS.load_kg, rest_s: LIMITS.rest_s } as const satisfies Record<DoseField, Range>;
const MAY_BE_EMPTY: readonly DoseField[] = ['load_kg', 'reps_high'];

/** The fields that a dose has: repetitions or a hold. */
export const fieldsOf = (dose: Prescription): DoseField[] => DOSE_FIELDS.filter((field) => (field === 'hold_s' ? dose.hold_s !== null : !field.startsWith('reps') || dose.hold_s === null));

/** Least and most that can be typed, in the unit that is shown. */
export function rangeOf(field: DoseField): { min: number; max: number } {
  const { min, max } = RANGES[field];
  return field === 'load_kg' ? { min: toShown('mass', min), max: toShown('mass', max) } : { min, max };
}

export function shownText(dose: Prescription, field: DoseField): string {
  const value = dose[field];
  if (value === null) return '';
  return String(field === 'load_kg' ? toShown('mass', value) : value);
}

function read(field: DoseField, text: string): number | null | undefined {
  if (!text.trim()) return MAY_BE_EMPTY.includes(field) ? null : undefined;
  const number = parseNumber(text);
  const si = number !== null && field === 'load_kg' ? toSi('mass', number) : number;
  return within(si, RANGES[field]) ?? undefined;
}

/** Fields whose text is no number that can be. */
export const unreadable = (typed: Typed): DoseField[] => DOSE_FIELDS.filter((field) => typed[field] !== undefined && read(field, typed[field]) === undefined);

/** The dose as typed; undefined where nothing was changed. */
export function editedDose(then: Prescription, typed: Typed): Prescription | undefined {
  const dose = { ...then };
  for (const field of DOSE_FIELDS) {
    const text = typed[field];
    if (text !== undefined && text !== shownText(then, field)) dose[field] = read(field, text) ?? null;
  }
  return JSON.stringify(dose) === JSON.stringify(then) ? undefined : dose;
}

export function acceptOf({ first }: Ready, typed: Typed): Choice {
  const edited = first.then && editedDose(first.then, typed);
  return { suggestion_id: first.id, action: 'accept', reason: '', edited: edited ? { ...edited, rest_s: edited.rest_s ?? 0, alternatives: edited.alternatives ?? [] } : null };
}

export const declineOf = ({ all }: Ready, reason: string): Choice[] => all.map(({ id }) => ({ suggestion_id: id, action: 'decline', reason, edited: null }));
