import type { Session } from '../../shared/program';
import { Options } from '../form/bare';
import { useMay } from '../rights/Needs';
import { KINDS } from './AddDay';
import { changeKind, setSession, type Kind } from './edit';
import type { Editor } from './editor';
import { focusSoon } from './focus';
import { LIMITS } from './limits';
import { NumberBox } from './NumberBox';
import { fieldId } from './pointer';
import { TextBox } from './TextBox';
import { coded, e } from './words';

interface FieldsProps<S extends Session = Session> {
  editor: Editor;
  session: S;
  /** JSON pointer of the session. */
  at: string;
}
type Fields = Parameters<typeof setSession>[2];

const setter = (editor: Editor, key: string) => (fields: Fields) =>
  editor.edit((now) => setSession(now, key, fields), `${key}.${Object.keys(fields).join()}`);

/** The numbers that its kind has, as a sentence. */
export function SessionNumbers({ editor, session, at }: FieldsProps) {
  if (session.kind === 'rest') return null;
  return (
    <div class="ed-sentence">
      {session.kind === 'circuit' && <Rounds editor={editor} session={session} at={at} />}
      {session.kind === 'walk' && <WalkNumbers editor={editor} session={session} at={at} />}
      <EffortNumbers editor={editor} session={session} at={at} />
    </div>
  );
}

function Rounds({ editor, session, at }: FieldsProps<Extract<Session, { kind: 'circuit' }>>) {
  const set = setter(editor, session.key);
  return <NumberBox editor={editor} id={fieldId(`${at}/rounds`)} before={e('rounds')} value={session.rounds} range={LIMITS.rounds} onChange={(rounds) => rounds !== null && set({ rounds })} />;
}

/** Name and kind, and what to do where the kind does not say it. */
export function SessionFields({ editor, session, at }: FieldsProps) {
  const set = setter(editor, session.key);
  const change = (kind: Kind) => {
    editor.edit((now) => changeKind(now, session.key, kind));
    editor.say(e('kindChanged', { kind: coded('kind', kind) }), true);
    focusSoon('session-kind');
  };
  return (
    <div class="ed-fields">
      <TextBox id={fieldId(`${at}/name`)} label={e('sessionName')} value={session.name} onChange={(name) => set({ name })} />
      <div class="field">
        <label for="session-kind">{e('sessionKind')}</label>
        <Options id="session-kind" value={session.kind} onChange={(event) => change(event.currentTarget.value as Kind)}>
          {KINDS.map((kind) => <option key={kind} value={kind}>{coded('kind', kind)}</option>)}
        </Options>
      </div>
      {session.kind === 'cardio' && <TextBox id={fieldId(`${at}/activity`)} label={e('activity')} value={session.activity} onChange={(activity) => set({ activity })} />}
    </div>
  );
}

function WalkNumbers({ editor, session, at }: FieldsProps<Extract<Session, { kind: 'walk' }>>) {
  const set = setter(editor, session.key);
  const box = { editor };
  return (
    <>
      <NumberBox {...box} id={fieldId(`${at}/distance_km`)} before={e('walkDistance')} quantity="distance" value={session.distance_km} range={LIMITS.distance_km} onChange={(value) => value !== null && set({ distance_km: value })} />
      <NumberBox {...box} id={fieldId(`${at}/ascent_m`)} before={e('walkAscent')} quantity="height" value={session.ascent_m} range={LIMITS.climb_m} onChange={(value) => value !== null && set({ ascent_m: value })} />
      <NumberBox {...box} id={fieldId(`${at}/descent_m`)} before={e('walkDescent')} quantity="height" value={session.descent_m} range={LIMITS.climb_m} onChange={(value) => value !== null && set({ descent_m: value })} />
      <NumberBox {...box} id={fieldId(`${at}/pack_kg`)} before={e('walkPack')} quantity="mass" value={session.pack_kg} range={LIMITS.pack_kg} onChange={(value) => value !== null && set({ pack_kg: value })} />
    </>
  );
}

function EffortNumbers({ editor, session, at }: FieldsProps<Exclude<Session, { kind: 'rest' }>>) {
  const set = setter(editor, session.key);
  return (
    <>
      <NumberBox editor={editor} id={fieldId(`${at}/expected_effort`)} before={e('effort')} after={e('effortOf')} value={session.expected_effort} range={LIMITS.effort} onChange={(value) => value !== null && set({ expected_effort: value })} />
      <NumberBox editor={editor} id={fieldId(`${at}/expected_minutes`)} before={e('minutes')} after={session.expected_minutes === null ? e('minutesEstimated') : e('minutesUnit')} optional value={session.expected_minutes} range={LIMITS.minutes} onChange={(expected_minutes) => set({ expected_minutes })} />
    </>
  );
}

export function SessionNote({ editor, session, at }: FieldsProps) {
  const set = setter(editor, session.key);
  if (!useMay() && !session.note) return null;
  return (
    <details class="ed-note" open={session.note !== ''}>
      <summary>{session.note ? e('sessionNote') : e('sessionNoteAdd')}</summary>
      <TextBox id={fieldId(`${at}/note`)} label={e('sessionNote')} hint={e('noteHint')} multiline max={4000} value={session.note} onChange={(note) => set({ note })} />
    </details>
  );
}
