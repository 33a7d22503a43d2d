import { REGIONS } from '../../shared/body/places';
import { s } from '../../shared/words/shared';
import { Button } from '../form/Button';
import { Several } from '../form/Choices';
import { Field } from '../form/Field';
import { coded } from '../editor/words';
import type { FieldErrors } from '../parts/ErrorSummary';
import { Lines } from './Lines';
import type { Form, Text } from './model';
import { o } from './words';

const QUALITIES = [
  'hip_control', 'knee_control', 'single_leg_strength', 'calf_strength', 'descent_control', 'trunk_control', 'shoulder_control',
  'balance', 'power', 'carrying', 'mobility',
] as const satisfies readonly Text['trains'][number][];

export interface PartProps {
  form: Form;
  errors: FieldErrors;
  edit: (next: (form: Form) => Form, field?: string | null) => void;
}

/** Name, use, what it trains and loads. */
export function About({ form: { text }, errors, edit }: PartProps) {
  const set = (change: Partial<Text>, field: string | null = null) => edit((form) => ({ ...form, text: { ...form.text, ...change } }), field);
  return (
    <section aria-labelledby="own-about">
      <h2 id="own-about">{o('aboutHead')}</h2>
      <div class="ed-fields">
        <Field label={o('name')} name="name" value={text.name} hint={o('nameHint')} error={errors.name} onInput={(name) => set({ name }, 'name')} />
        <Field label={o('why')} name="why" value={text.why} hint={o('sentenceHint')} error={errors.why} onInput={(why) => set({ why }, 'why')} />
      </div>
      <Several legend={o('trains')} options={QUALITIES.map((value) => ({ value, label: coded('quality', value) }))} value={text.trains} error={errors.trains} onChange={(trains) => set({ trains })} />
      <Several legend={o('loads')} options={REGIONS.map((value) => ({ value, label: s(value) }))} value={text.loads} error={errors.loads} onChange={(loads) => set({ loads })} />
    </section>
  );
}

/** Cues, faults, cautions. */
export function Teaching({ form: { text }, errors, edit }: PartProps) {
  const set = (change: Partial<Text>, field: string | null = null) => edit((form) => ({ ...form, text: { ...form.text, ...change } }), field);
  const { cues, cautions, faults } = text;
  return (
    <section aria-labelledby="own-teach">
      <h2 id="own-teach">{o('teachHead')}</h2>
      <Lines name="cue" lines={cues} least={3} most={4} label={(n) => o('cue', { n })} add={o('addCue')} hint={o('sentenceHint')} errors={errors} onChange={(next, field) => set({ cues: next }, field)} />
      {faults.map((fault, i) => (
        <div key={i} class="own-line">
          <Field label={o('faultSee', { n: i + 1 })} name={`fault.${i}.see`} value={fault.see} error={errors[`fault.${i}.see`]} onInput={(see) => set({ faults: faults.map((old, at) => (at === i ? { ...old, see } : old)) }, `fault.${i}.see`)} />
          <Field label={o('faultInstead', { n: i + 1 })} name={`fault.${i}.instead`} value={fault.instead} error={errors[`fault.${i}.instead`]} onInput={(instead) => set({ faults: faults.map((old, at) => (at === i ? { ...old, instead } : old)) }, `fault.${i}.instead`)} />
          {faults.length > 1 && <Button small kind="quiet" aria-label={o('removeNamed', { what: o('faultSee', { n: i + 1 }) })} onClick={() => set({ faults: faults.filter((_, at) => at !== i) })}>{o('remove')}</Button>}
        </div>
      ))}
      {faults.length < 4 && <Button small kind="quiet" onClick={() => set({ faults: [...faults, { see: '', instead: '' }] })}>{o('addFault')}</Button>}
      <Lines name="caution" lines={cautions} least={1} most={4} label={(n) => o('caution', { n })} add={o('addCaution')} hint={o('cautionHint')} errors={errors} onChange={(next, field) => set({ cautions: next }, field)} />
    </section>
  );
}
