import { addDays, fullDate } from '../../shared/dates';
import type { ProgramContent } from '../../shared/program';
import { Button } from '../form/Button';
import type { Editor } from './editor';
import { endOf } from './editDays';
import { focusSoon } from './focus';
import { fieldId } from './pointer';
import { DateBox, TextBox } from './TextBox';
import { e } from './words';

/** Title, trip and dates: what holds the whole program together. */
export function Frame({ editor }: { editor: Editor }) {
  const content = editor.content.value;
  if (!content) return null;
  const end = endOf(content);
  const span = end ? e('frameSpan', { from: fullDate(content.starts_on), until: fullDate(end) }) : e('frameOpen', { from: fullDate(content.starts_on) });
  const set = (fields: Partial<ProgramContent>, field: string | null = null) => editor.edit((now) => ({ ...now, ...fields }), field);
  return (
    <details id="frame" class="ed-frame">
      <summary>{e('frameTitle')} {content.title || e('unnamedProgram')}, {content.goal ? e('frameTrip', { name: content.goal.name, date: fullDate(content.goal.date) }) : span}</summary>
      <div class="ed-fields">
        <TextBox id={fieldId('/title')} label={e('programName')} hint={e('programNameHint')} value={content.title} onChange={(title) => set({ title }, 'title')} />
        <DateBox id={fieldId('/starts_on')} label={e('startsOn')} value={content.starts_on} onChange={(starts_on) => starts_on && set({ starts_on })} />
        <Goal editor={editor} content={content} />
        <DateBox id={fieldId('/ends_on')} label={e('endsOn')} hint={content.goal ? e('endsHint') : ''} value={content.ends_on ?? ''} onChange={(ends_on) => set({ ends_on: ends_on || null })} />
      </div>
    </details>
  );
}

function Goal({ editor, content }: { editor: Editor; content: ProgramContent }) {
  const { goal } = content;
  const set = (next: ProgramContent['goal'], field: string | null = null) => editor.edit((now) => ({ ...now, goal: next }), field);
  const add = () => {
    set({ name: '', date: addDays(endOf(content) ?? content.starts_on, 1) });
    focusSoon(fieldId('/goal/name'));
  };
  const remove = () => {
    editor.edit((now) => ({ ...now, goal: null, ends_on: endOf(now) }));
    editor.say(e('tripTakenOut'), true);
    focusSoon(fieldId('/ends_on'));
  };
  if (!goal) return <div class="ed-row"><Button small onClick={add}>{e('addTrip')}</Button></div>;
  return (
    <>
      <TextBox id={fieldId('/goal/name')} label={e('tripName')} value={goal.name} onChange={(name) => set({ ...goal, name }, 'goal-name')} />
      <DateBox id={fieldId('/goal/date')} label={e('tripDate')} value={goal.date} onChange={(date) => date && set({ ...goal, date })} />
      <div class="ed-row"><Button small kind="quiet" onClick={remove}>{e('removeTrip')}</Button></div>
    </>
  );
}
