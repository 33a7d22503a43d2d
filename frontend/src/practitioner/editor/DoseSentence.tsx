import type { Prescription, Sides } from '../../shared/program';
import { Options } from '../form/bare';
import { variantOf } from '../exercises/entry';
import { usualDose } from './edit';
import type { Editor } from './editor';
import { LIMITS } from './limits';
import { NumberBox } from './NumberBox';
import { exerciseName } from './phrases';
import { fieldId } from './pointer';
import { e } from './words';

interface DoseProps {
  editor: Editor;
  one: Prescription;
  at: string;
  /** Of what may be done instead: tempo and rest are the prescription's. */
  instead?: boolean;
  /** Changes fields; a named one while it is typed is one step for undo. */
  onChange: (fields: Fields, field: string | null) => void;
}
type Fields = Partial<Omit<Prescription, 'key' | 'alternatives'>>;

/** The dose as a sentence with fields in it. */
export function DoseSentence({ editor, one, at, instead, onChange: set }: DoseProps) {
  const of = exerciseName(one, editor.library);
  const rung = variantOf(editor.library.get(one.exercise), one.variant);
  const isHold = one.hold_s !== null;
  const turn = (to: string) => {
    const usual = rung ? usualDose(rung.dose) : null;
    if (to === 'hold') set({ reps_low: null, reps_high: null, hold_s: usual?.hold_s ?? HOLD_START_S }, null);
    else set({ hold_s: null, reps_low: usual?.reps_low ?? null, reps_high: usual?.reps_high ?? null }, null);
  };
  const box = (name: keyof Fields) => ({ editor, of, id: fieldId(`${at}/${name}`), optional: true, onChange: (value: number | null) => set({ [name]: value }, name) });
  return (
    <div class="ed-sentence">
      <label><span class="sr">{of}, </span><span class="sr">{e('doseKind')}</span>
        <Options value={isHold ? 'hold' : 'reps'} onChange={(event) => turn(event.currentTarget.value)}>
          <option value="reps">{e('doseReps')}</option>
          <option value="hold">{e('doseHold')}</option>
        </Options>
      </label>
      {isHold
        ? <NumberBox {...box('hold_s')} optional={false} before={e('holdFor')} after={e('seconds')} value={one.hold_s} range={LIMITS.hold_s} />
        : (
          <>
            <NumberBox {...box('reps_low')} before={e('repsFrom')} value={one.reps_low} range={LIMITS.reps} />
            <NumberBox {...box('reps_high')} before={e('repsTo')} after={e('times')} value={one.reps_high} range={LIMITS.reps} />
          </>
        )}
      <label><span class="sr">{of}, </span><span class="sr">{e('sides')}</span>
        <Options id={fieldId(`${at}/sides`)} value={one.sides} onChange={(event) => set({ sides: event.currentTarget.value as Sides }, null)}>
          <option value="each">{e('sidesEach')}</option>
          <option value="both">{e('sidesBoth')}</option>
        </Options>
      </label>
      {(rung?.load !== 'none' || one.load_kg !== null) && <NumberBox {...box('load_kg')} before={e('loadWith')} quantity="mass" value={one.load_kg} range={LIMITS.load_kg} />}
      {!instead && <NumberBox {...box('tempo_down_s')} before={e('tempoDown')} after={e('seconds')} value={one.tempo_down_s} range={LIMITS.tempo_down_s} />}
      {!instead && <NumberBox {...box('rest_s')} optional={false} before={e('thenRest')} after={e('seconds')} value={one.rest_s} range={LIMITS.rest_s} onChange={(rest_s) => rest_s !== null && set({ rest_s }, 'rest_s')} />}
    </div>
  );
}

/** Seconds of hold where the library gives none for the variant. House: a starting value. */
const HOLD_START_S = 20;
