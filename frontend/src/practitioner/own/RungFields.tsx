import { KIT } from '../api/types';
import { Button } from '../form/Button';
import { Several } from '../form/Choices';
import { Field, Select } from '../form/Field';
import { coded } from '../editor/words';
import type { FieldErrors } from '../parts/ErrorSummary';
import { Lines } from './Lines';
import type { Rung } from './model';
import { o } from './words';

interface RungProps {
  rung: Rung;
  at: number;
  errors: FieldErrors;
  onChange: (rung: Rung, field?: string | null) => void;
  /** It was saved, and records may name it. */
  stays: boolean;
  /** Null where it is the only one. */
  onRemove: (() => void) | null;
}

/** The words and the usual dose of one variant. */
export function RungFields({ rung, at, errors, onChange, stays, onRemove }: RungProps) {
  const name = `rung.${at}`;
  const of = o('rung', { n: at + 1 });
  return (
    <>
      <div class="ed-fields">
        <Field label={o('rungName', { n: at + 1 })} name={`${name}.name`} value={rung.name} hint={o('rungNameHint')} error={errors[`${name}.name`]} onInput={(text) => onChange({ ...rung, name: text }, `${name}.name`)} />
        <Field label={`${of}: ${o('rungShort')}`} name={`${name}.short`} value={rung.short} error={errors[`${name}.short`]} onInput={(short) => onChange({ ...rung, short }, `${name}.short`)} />
        <Select label={`${of}: ${o('sides')}`} value={rung.sides} options={[{ value: 'both', label: o('sidesBoth') }, { value: 'each', label: o('sidesEach') }]} onChange={(sides) => onChange({ ...rung, sides })} />
        <Select label={`${of}: ${o('load')}`} value={rung.load} options={(['none', 'optional', 'required'] as const).map((value) => ({ value, label: o(`load_${value}`) }))} onChange={(load) => onChange({ ...rung, load })} />
      </div>
      <Dose rung={rung} at={at} errors={errors} onChange={onChange} />
      <Lines name={`${name}.how`} lines={rung.how} least={2} most={4} label={(n) => `${of}, ${o('step', { n })}`} add={o('addStep')} errors={errors} onChange={(how, field) => onChange({ ...rung, how }, field)} />
      <details>
        <summary>{o('kit')}{rung.kit.length > 0 && `: ${rung.kit.map((one) => coded('kit', one)).join(', ')}`}</summary>
        <Several legend={`${of}: ${o('kit')}`} hideLegend options={KIT.map((value) => ({ value, label: coded('kit', value) }))} value={rung.kit} error={errors[`${name}.kit`]} onChange={(kit) => onChange({ ...rung, kit })} />
      </details>
      {stays ? <p class="soft">{o('rungStays')}</p> : onRemove && <Button small kind="quiet" onClick={onRemove}>{o('removeNamed', { what: of })}</Button>}
    </>
  );
}

function Dose({ rung, at, errors, onChange }: Omit<RungProps, 'stays' | 'onRemove'>) {
  const of = o('rung', { n: at + 1 });
  const counted = 'reps' in rung.dose;
  const [low, high] = 'reps' in rung.dose ? rung.dose.reps : rung.dose.hold_s;
  const make = (pair: [number, number]): Rung['dose'] => (counted ? { reps: pair } : { hold_s: pair });
  const whole = (text: string) => (/^\d{1,4}$/.test(text.trim()) ? Number(text) : 0);
  const shown = (value: number) => (value ? String(value) : '');
  return (
    <div class="ed-fields">
      <Select label={`${of}: ${o('doseKind')}`} value={counted ? 'reps' : 'hold'} options={[{ value: 'reps', label: o('doseReps') }, { value: 'hold', label: o('doseHold') }]} onChange={(kind) => onChange({ ...rung, dose: kind === 'reps' ? { reps: [8, 12] } : { hold_s: [20, 40] } })} />
      <Field label={`${of}: ${o('doseLow')}`} name={`rung.${at}.low`} inputMode="numeric" value={shown(low)} error={errors[`rung.${at}.low`]} onInput={(text) => onChange({ ...rung, dose: make([whole(text), high]) }, `rung.${at}.low`)} />
      <Field label={`${of}: ${o('doseHigh')}`} name={`rung.${at}.high`} inputMode="numeric" value={shown(high)} onInput={(text) => onChange({ ...rung, dose: make([low, whole(text)]) }, `rung.${at}.high`)} />
    </div>
  );
}
