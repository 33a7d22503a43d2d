/** What the client form holds, as text and choices, and what it becomes: pure. */
import { spellings } from './zones';
import { parseNumber } from '../../shared/numbers';
import type { Client, ClientFields, Kit } from '../api/types';
import type { FieldErrors } from '../parts/ErrorSummary';
import { t } from '../words';

export interface ClientForm {
  display_name: string;
  birth_year: string;
  sex: 'female' | 'male' | '';
  height_cm: string;
  body_mass_kg: string;
  time_zone: string;
  kit: Kit[];
  usual_pain: string;
  pain_stop: string;
  note: string;
}
export const PAIN_STOP_DEFAULT = 6;
export const PAIN_STOP_LEAST = 3;
/** What the server takes. */
export const HEIGHT_CM = { min: 100, max: 230 };
export const BODY_MASS_KG = { min: 25, max: 300 };

export const emptyForm = (zone: string): ClientForm => ({
  display_name: '', birth_year: '', sex: '', height_cm: '', body_mass_kg: '', time_zone: zone, kit: [], usual_pain: '0', pain_stop: String(PAIN_STOP_DEFAULT), note: '',
});

export const formOf = (client: ClientFields): ClientForm => ({
  display_name: client.display_name,
  birth_year: client.birth_year === null ? '' : String(client.birth_year),
  sex: client.sex ?? '',
  height_cm: client.height_cm === null ? '' : String(client.height_cm),
  body_mass_kg: client.body_mass_kg === null ? '' : String(client.body_mass_kg),
  time_zone: client.time_zone,
  kit: [...client.kit].sort(),
  usual_pain: String(client.usual_pain),
  pain_stop: String(client.thresholds.pain_stop),
  note: client.note,
});

export const fieldsOf = (form: ClientForm): ClientFields => ({
  display_name: form.display_name.trim(),
  birth_year: form.birth_year.trim() ? parseNumber(form.birth_year) : null,
  sex: form.sex || null,
  height_cm: form.height_cm.trim() ? parseNumber(form.height_cm) : null,
  body_mass_kg: form.body_mass_kg.trim() ? parseNumber(form.body_mass_kg) : null,
  time_zone: form.time_zone,
  kit: form.kit,
  usual_pain: Number(form.usual_pain),
  thresholds: { pain_stop: Number(form.pain_stop) },
  note: form.note.trim(),
});

/** Nothing, or a number that can be. */
function isWithin(text: string, { min, max }: { min: number; max: number }): boolean {
  const number = parseNumber(text);
  return !text.trim() || (number !== null && number >= min && number <= max);
}

/** What must be changed before it can be sent, in words. */
export function formErrors(form: ClientForm, thisYear: number): FieldErrors {
  const errors: FieldErrors = {};
  if (!form.display_name.trim()) errors.display_name = t('clientNameMissing');
  const year = parseNumber(form.birth_year);
  const isYear = year !== null && Number.isInteger(year) && year >= 1900 && year <= thisYear;
  if (form.birth_year.trim() && !isYear) errors.birth_year = t('birthYearOdd', { year: String(thisYear) });
  if (!isWithin(form.height_cm, HEIGHT_CM)) errors.height_cm = t('heightOdd', HEIGHT_CM);
  if (!isWithin(form.body_mass_kg, BODY_MASS_KG)) errors.body_mass_kg = t('massOdd', BODY_MASS_KG);
  return errors;
}

export interface Difference { field: keyof ClientForm; theirs: string; yours: string }
export const LABELS = {
  display_name: 'clientName', birth_year: 'birthYear', sex: 'sex', height_cm: 'heightCm', body_mass_kg: 'massKg', time_zone: 'timeZone', kit: 'kitLegend', usual_pain: 'usualPain', pain_stop: 'painStop', note: 'clientNote',
} as const;

const asText = (form: ClientForm, field: keyof ClientForm): string =>
  field === 'sex' ? (form.sex ? t(`sex_${form.sex}`) : '') : field === 'kit' ? [...form.kit].sort().map((kit) => t(`kit_${kit}`)).join(', ') : field === 'time_zone' ? spellings(form.time_zone) : form[field].trim();

/** Where what a colleague saved and what was typed here go apart. */
export function differences(theirs: Client, mine: ClientForm): Difference[] {
  const other = formOf(theirs);
  return (Object.keys(LABELS) as (keyof ClientForm)[])
    .map((field) => ({ field, theirs: asText(other, field), yours: asText(mine, field) }))
    .filter((one) => one.theirs !== one.yours)
    .map((one) => ({ ...one, theirs: one.theirs || t('emptyValue'), yours: one.yours || t('emptyValue') }));
}
