import { useState } from 'preact/hooks';
import type { Prescription } from '../../../shared/program';
import { Stepper } from '../../../shared/form/Stepper';
import { toShown, toSi, unitOf } from '../../../shared/units';
import type { Really } from '../../session/actions';
import { t } from '../../words';

const REPS_MAX = 500;
const HOLD_MAX_S = 3600;
const LOAD_MAX_KG = 300;

interface ReallyProps {
  dose: Prescription;
  /** The variant can be done with a weight, also where none is prescribed. */
  canCarry: boolean;
  value: Really;
  onChange: (value: Really) => void;
}

/** What was done, where it was not what the plan says. Nothing here needs to be touched. */
export function ReallyDone({ dose, canCarry, value, onChange }: ReallyProps) {
  const [open, setOpen] = useState(false);
  const load = value.load_kg ?? dose.load_kg ?? (canCarry ? 0 : null);
  return (
    <details class="really" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{t('reallyTitle')}</summary>
      <p class="note soft">{t('reallyHint')}</p>
      {dose.hold_s === null ? (
        <Stepper label={t('reallyReps')} unit={t('timesUnit')} min={0} max={REPS_MAX} value={value.reps ?? dose.reps_low ?? 0} onChange={(reps) => onChange({ ...value, reps: Math.round(reps) })} />
      ) : (
        <Stepper label={t('reallyHold')} unit={t('secondsUnit')} min={0} max={HOLD_MAX_S} step={5} value={value.hold_s ?? dose.hold_s} onChange={(hold) => onChange({ ...value, hold_s: Math.round(hold) })} />
      )}
      {load !== null && (
        <Stepper label={t('reallyLoad')} unit={unitOf('mass')} min={0} max={toShown('mass', LOAD_MAX_KG)} value={toShown('mass', load)} onChange={(shown) => onChange({ ...value, load_kg: toSi('mass', shown) })} />
      )}
    </details>
  );
}
