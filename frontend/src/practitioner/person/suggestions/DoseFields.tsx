import type { Prescription } from '../../../shared/program';
import { unitOf } from '../../../shared/units';
import { Field } from '../../form/Field';
import { t } from '../../words';
import { fieldsOf, rangeOf, shownText, unreadable, type DoseField, type Typed } from './choices';

const UNITS: Record<DoseField, () => string> = { reps_low: () => '', reps_high: () => '', hold_s: () => 's', load_kg: () => unitOf('mass'), rest_s: () => 's' };

/** The suggested dose as fields: what it becomes before it goes out. */
export function DoseFields({ id, dose, typed, onChange }: { id: string; dose: Prescription; typed: Typed; onChange: (typed: Typed) => void }) {
  const odd = unreadable(typed);
  return (
    <div class="dose-fields" role="group" aria-label={t('sugDoseLegend')}>
      {fieldsOf(dose).map((field) => (
        <Field key={field} label={t(`sug_${field}`)} name={`${field}.${id}`} inputMode="decimal" autoComplete="off" unit={UNITS[field]()}
          value={typed[field] ?? shownText(dose, field)} onInput={(text) => onChange({ ...typed, [field]: text })}
          error={odd.includes(field) ? t('sugNumber', rangeOf(field)) : null} />
      ))}
    </div>
  );
}
