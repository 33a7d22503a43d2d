import { useState } from 'preact/hooks';
import { addDays, dayAndMonth, dayName, type LocalDate } from '../../shared/dates';
import { Button } from '../form/Button';
import { Options } from '../form/bare';
import { addSession, blankSession, type Kind } from './edit';
import { addDay, idAt, onDate } from './editDays';
import type { Editor } from './editor';
import { focusSoon } from './focus';
import { PER_DATE_MAX, SESSIONS_MAX } from './limits';
import { sessionName } from './phrases';
import { coded, e } from './words';

export const KINDS: readonly Kind[] = ['circuit', 'walk', 'cardio', 'rest'];
const WEEK = [0, 1, 2, 3, 4, 5, 6];
const NEW = 'new ';

/** Another planned day in this week: which session, then the weekday. */
export function AddDay({ editor, monday }: { editor: Editor; monday: LocalDate }) {
  const [open, setOpen] = useState(false);
  const [what, setWhat] = useState('');
  const sessions = editor.content.value?.sessions ?? [];
  const picked = what || editor.shown.value.session?.key || `${NEW}circuit`;
  const id = `add-${monday}`;
  const add = (date: LocalDate) => {
    const problem = put(editor, picked, date);
    if (problem) return editor.say(problem);
    setOpen(false);
    setWhat('');
  };
  if (!open) {
    return <Button small kind="quiet" id={id} onClick={() => (setOpen(true), focusSoon(`${id}-what`))}>{e('addDay')}</Button>;
  }
  return (
    <div class="ed-add" role="group" aria-label={e('addDay')}>
      <div class="field">
        <label for={`${id}-what`}>{e('addDayWhat')}</label>
        <Options id={`${id}-what`} value={picked} onChange={(event) => setWhat(event.currentTarget.value)}>
          {sessions.map((session) => <option key={session.key} value={session.key}>{sessionName(session)}</option>)}
          {KINDS.map((kind) => <option key={kind} value={NEW + kind}>{e('newOfKind', { kind: coded('kind', kind) })}</option>)}
        </Options>
      </div>
      <p id={`${id}-on`}>{e('addDayOn')}</p>
      <div class="ed-weekdays" role="group" aria-labelledby={`${id}-on`}>
        {WEEK.map((after) => addDays(monday, after)).map((date) => (
          <Button key={date} small aria-label={`${dayName(date)} ${dayAndMonth(date)}`} onClick={() => add(date)}>{dayName(date)}</Button>
        ))}
      </div>
      <Button small kind="quiet" onClick={() => (setOpen(false), focusSoon(id))}>{e('cancel')}</Button>
    </div>
  );
}

/** Plans the session, a new one where asked for. Answers why it could not, or null. */
function put(editor: Editor, picked: string, date: LocalDate): string | null {
  const content = editor.content.peek();
  if (!content) return null;
  if (onDate(content, date) >= PER_DATE_MAX) return e('dayFull', { date: dayAndMonth(date), n: PER_DATE_MAX });
  const isNew = picked.startsWith(NEW);
  if (isNew && content.sessions.length >= SESSIONS_MAX) return e('sessionsFull', { n: SESSIONS_MAX });
  const kind = picked.slice(NEW.length) as Kind;
  const session = isNew ? blankSession(kind, editor.key('s'), coded('name', kind)) : null;
  const key = session?.key ?? picked;
  const day = { date, session: key, fixed_day: false };
  editor.edit((now) => addDay(session ? addSession(now, session) : now, day));
  const after = editor.content.peek();
  const place = after ? after.days.findLastIndex((one) => one.date === date) : -1;
  editor.choice.value = { day: after && idAt(after, place), session: null };
  editor.say(e('dayAdded', { date: `${dayName(date)} ${dayAndMonth(date)}` }), true);
  focusSoon('session-heading');
  return null;
}
