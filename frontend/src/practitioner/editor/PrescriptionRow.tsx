import { useState } from 'preact/hooks';
import { Arrow } from '../../shared/marks/marks';
import type { Prescription } from '../../shared/program';
import { Button } from '../form/Button';
import { Press } from '../form/bare';
import { chooseVariant, setPrescription } from './edit';
import type { Editor } from './editor';
import { Allowed } from './Allowed';
import { DoseSentence } from './DoseSentence';
import { focusSoon } from './focus';
import { Instead } from './Instead';
import { exerciseName, wasWords } from './phrases';
import { fieldId } from './pointer';
import { RungLine } from './RungLine';
import { TextBox } from './TextBox';
import { e } from './words';

interface RowProps {
  editor: Editor;
  /** Key of the session. */
  session: string;
  one: Prescription;
  /** 1 for the first. */
  place: number;
  at: string;
  onMove: (by: -1 | 1) => void;
  onRemove: () => void;
}

/** One exercise: its place, its rung, its dose as a sentence, its note, and what it was before. */
export function PrescriptionRow({ editor, session, one, place, at, onMove, onRemove }: RowProps) {
  const name = exerciseName(one, editor.library);
  return (
    <li id={fieldId(at)} tabIndex={-1}>
      <div class="ed-move">
        <Press type="button" id={`up-${one.key}`} aria-label={e('moveUp', { name })} onClick={() => onMove(-1)}><Arrow to="up" /></Press>
        <Press type="button" id={`down-${one.key}`} aria-label={e('moveDown', { name })} onClick={() => onMove(1)}><Arrow to="down" /></Press>
      </div>
      <div>
        <div class="ed-rx-head">
          <h3 id={`rx-${one.key}`} tabIndex={-1}>{place}. <span lang="en">{name}</span></h3>
          <Was editor={editor} one={one} />
        </div>
        <RungLine editor={editor} one={one} at={at} onChange={(entry, variant) => editor.edit((now) => chooseVariant(now, session, one.key, entry, variant))} />
        <DoseSentence editor={editor} one={one} at={at} onChange={(fields, field) => editor.edit((now) => setPrescription(now, session, one.key, fields), field && `${one.key}.${field}`)} />
        <Allowed editor={editor} session={session} one={one} at={at} />
        <Instead editor={editor} session={session} one={one} key={one.exercise} />
        <NoteAndRemove editor={editor} session={session} one={one} at={at} name={name} onRemove={onRemove} />
      </div>
    </li>
  );
}

function Was({ editor, one }: Pick<RowProps, 'editor' | 'one'>) {
  const base = editor.base.value;
  if (!base) return null;
  const before = base.content.sessions.flatMap((each) => (each.kind === 'circuit' ? each.prescriptions : [])).find((each) => each.key === one.key);
  if (!before) return <span class="planned">{e('isNew')}</span>;
  const was = wasWords(before, one, editor.library);
  return was ? <><span class="call">{e('changedWord')}</span> <span class="soft">{e('was')} <s>{was}</s></span></> : null;
}

interface NoteProps extends Pick<RowProps, 'editor' | 'session' | 'one' | 'at' | 'onRemove'> {
  name: string;
}

function NoteAndRemove({ editor, session, one, at, name, onRemove }: NoteProps) {
  const [open, setOpen] = useState(one.note !== '');
  const id = fieldId(`${at}/note`);
  const write = () => {
    setOpen(true);
    focusSoon(id);
  };
  return (
    <>
      {open && <TextBox id={id} of={name} label={e('exerciseNote')} hint={e('noteHint')} multiline max={4000} value={one.note} onChange={(note) => editor.edit((now) => setPrescription(now, session, one.key, { note }), `${one.key}.note`)} />}
      <p class="ed-row">
        {!open && <Button small kind="quiet" onClick={write} aria-label={`${e('exerciseNoteAdd')}: ${name}`}>{e('exerciseNoteAdd')}</Button>}
        <Button small kind="quiet" onClick={onRemove} aria-label={`${e('removeExercise')}: ${name}`}>{e('removeExercise')}</Button>
      </p>
    </>
  );
}
