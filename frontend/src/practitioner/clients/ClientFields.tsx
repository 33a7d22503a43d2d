import { KIT } from '../api/types';
import { Several } from '../form/Choices';
import { Field, Select } from '../form/Field';
import type { FieldErrors } from '../parts/ErrorSummary';
import { t } from '../words';
import { PAIN_STOP_LEAST, type ClientForm } from './fields';
import { zones } from './zones';

const ratings = (least: number) => Array.from({ length: 11 - least }, (_, i) => String(least + i)).map((value) => ({ value, label: t('ofTenOption', { value }) }));

interface Props {
  form: ClientForm;
  errors: FieldErrors;
  onChange: (form: ClientForm) => void;
}

/** What is known of a client, as fields. */
export function ClientFieldSet({ form, errors, onChange }: Props) {
  const set = <K extends keyof ClientForm>(field: K) => (value: ClientForm[K]) => onChange({ ...form, [field]: value });
  return (
    <>
      <Field label={t('clientName')} hint={t('clientNameHint')} name="display_name" autoComplete="off" required value={form.display_name} onInput={set('display_name')} error={errors.display_name} />
      <Field label={t('birthYear')} hint={t('birthYearHint')} name="birth_year" inputMode="numeric" autoComplete="off" value={form.birth_year} onInput={set('birth_year')} error={errors.birth_year} />
      <Select label={t('sex')} hint={t('forNormsHint')} value={form.sex} onChange={set('sex')}
        options={[{ value: '', label: t('sexOpen') }, { value: 'female', label: t('sex_female') }, { value: 'male', label: t('sex_male') }]} />
      <Field label={t('heightCm')} hint={t('forNormsHint')} name="height_cm" inputMode="decimal" unit="cm" autoComplete="off" value={form.height_cm} onInput={set('height_cm')} error={errors.height_cm} />
      <Field label={t('massKg')} hint={t('forNormsHint')} name="body_mass_kg" inputMode="decimal" unit="kg" autoComplete="off" value={form.body_mass_kg} onInput={set('body_mass_kg')} error={errors.body_mass_kg} />
      <Select label={t('timeZone')} hint={t('timeZoneHint')} value={form.time_zone} options={zones(form.time_zone)} onChange={set('time_zone')} />
      <Several legend={t('kitLegend')} options={KIT.map((value) => ({ value, label: t(`kit_${value}`) }))} value={form.kit} onChange={set('kit')} />
      <Select label={t('usualPain')} hint={t('usualPainHint')} value={form.usual_pain} options={ratings(0)} onChange={set('usual_pain')} />
      <Select label={t('painStop')} hint={t('painStopHint')} value={form.pain_stop} options={ratings(PAIN_STOP_LEAST)} onChange={set('pain_stop')} />
      <Field label={t('clientNote')} hint={t('clientNoteHint')} name="note" multiline value={form.note} onInput={set('note')} />
    </>
  );
}
