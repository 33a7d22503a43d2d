import type { Circuit } from '../../shared/program';
import { AddExercise } from './AddExercise';
import { addPrescription, movePrescription, prescribe, removePrescription } from './edit';
import type { Editor } from './editor';
import { focusSoon } from './focus';
import { PRESCRIPTIONS_MAX } from './limits';
import { exerciseName } from './phrases';
import { fieldId } from './pointer';
import { PrescriptionRow } from './PrescriptionRow';
import { missingKit, type Entry } from '../exercises/entry';
import { e } from './words';

/** The exercises of a circuit in their order. */
export function Prescriptions({ editor, session, at }: { editor: Editor; session: Circuit; at: string }) {
  const list = session.prescriptions;
  const move = (key: string, by: -1 | 1) => {
    const place = list.findIndex((one) => one.key === key);
    const name = exerciseName(list[place]!, editor.library);
    if (!list[place + by]) return editor.say(by < 0 ? e('alreadyFirst', { name }) : e('alreadyLast', { name }));
    editor.edit((now) => movePrescription(now, session.key, key, by));
    editor.say(e('moved', { name, place: place + by + 1, of: list.length }));
    focusSoon(`${by < 0 ? 'up' : 'down'}-${key}`);
  };
  const remove = (key: string) => {
    const place = list.findIndex((one) => one.key === key);
    const next = list[place + 1] ?? list[place - 1];
    editor.edit((now) => removePrescription(now, session.key, key));
    editor.say(e('exerciseRemoved', { name: exerciseName(list[place]!, editor.library) }), true);
    focusSoon(next ? `rx-${next.key}` : 'add-exercise');
  };
  const add = (entry: Entry) => {
    if (list.length >= PRESCRIPTIONS_MAX) return editor.say(e('exercisesFull', { n: PRESCRIPTIONS_MAX }));
    const fits = entry.ladder.find((rung) => missingKit(rung.kit, editor.client.peek().kit).length === 0) ?? entry.ladder[0]!;
    const one = prescribe(entry, fits.variant, editor.key('p'), list.at(-1)?.rest_s ?? undefined);
    editor.edit((now) => addPrescription(now, session.key, one));
    editor.say(e('exerciseAdded', { name: entry.name, variant: fits.name }), true);
    focusSoon(`rx-${one.key}`);
  };
  return (
    <>
      <ol class="ed-rx" id={fieldId(`${at}/prescriptions`)} tabIndex={-1} aria-label={e('exercisesInOrder')}>
        {list.map((one, i) => (
          <PrescriptionRow key={one.key} editor={editor} session={session.key} one={one} place={i + 1} at={`${at}/prescriptions/${i}`} onMove={(by) => move(one.key, by)} onRemove={() => remove(one.key)} />
        ))}
      </ol>
      {list.length === 0 && <p>{e('circuitEmpty')}</p>}
      <AddExercise editor={editor} onAdd={add} />
    </>
  );
}
