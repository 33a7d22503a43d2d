import { instead, type Alternative, type Prescription } from '../../shared/program';
import { Button } from '../form/Button';
import type { Entry } from '../exercises/entry';
import { DoseSentence } from './DoseSentence';
import type { Editor } from './editor';
import { focusSoon } from './focus';
import { chooseAllowed, removeAllowed, setAllowed } from './instead';
import { exerciseName } from './phrases';
import { fieldId } from './pointer';
import { RungLine } from './RungLine';
import { TextBox } from './TextBox';
import { e } from './words';

interface AllowedProps {
  editor: Editor;
  /** Key of the session. */
  session: string;
  one: Prescription;
  at: string;
}

/** What the client may do instead: each with its rung, its dose, its reason, and the way to take it out. */
export function Allowed({ editor, session, one, at }: AllowedProps) {
  const all = one.alternatives ?? [];
  if (all.length === 0) return null;
  const name = exerciseName(one, editor.library);
  return (
    <div>
      <p><b>{e('allowedTitle')}</b></p>
      <ul class="ed-list" aria-label={e('allowedOf', { name })}>
        {all.map((each, i) => <One key={each.exercise} editor={editor} session={session} one={one} each={each} at={`${at}/alternatives/${i}`} />)}
      </ul>
    </div>
  );
}

function One({ editor, session, one, each, at }: AllowedProps & { each: Alternative }) {
  const other = instead(one, each);
  const name = exerciseName(other, editor.library);
  const known = editor.library.has(each.exercise);
  const set = (fields: Partial<Alternative>, field: string | null) =>
    editor.edit((now) => setAllowed(now, session, one.key, each.exercise, fields), field && `${one.key}.${each.exercise}.${field}`);
  const choose = (entry: Entry, variant: string) => editor.edit((now) => chooseAllowed(now, session, one.key, entry, variant));
  const remove = () => {
    editor.edit((now) => removeAllowed(now, session, one.key, each.exercise));
    editor.say(e('allowedRemoved', { name }), true);
    focusSoon(`rx-${one.key}`);
  };
  return (
    <li id={fieldId(at)} tabIndex={-1}>
      <div>
        <p id={known ? fieldId(`${at}/exercise`) : undefined} tabIndex={-1}><b lang="en">{name}</b></p>
        <RungLine editor={editor} one={other} at={at} onChange={choose} />
        <DoseSentence editor={editor} one={other} at={at} instead onChange={set} />
        <TextBox id={fieldId(`${at}/reason`)} of={name} label={e('allowedReason')} hint={e('allowedReasonHint')} value={each.reason} onChange={(reason) => set({ reason }, 'reason')} />
        <p class="ed-row"><Button small kind="quiet" onClick={remove} aria-label={`${e('allowedRemove')}: ${name}`}>{e('allowedRemove')}</Button></p>
      </div>
    </li>
  );
}
