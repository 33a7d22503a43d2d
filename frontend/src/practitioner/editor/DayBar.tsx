import { addDays, dayAndMonth, dayName, type LocalDate } from '../../shared/dates';
import type { PlannedSession, ProgramContent } from '../../shared/program';
import { Button } from '../form/Button';
import { Input, Options } from '../form/bare';
import { idAt, moveDay, onDate, placeOf, removeDay, setDay } from './editDays';
import type { Editor } from './editor';
import { focusSoon } from './focus';
import { PER_DATE_MAX } from './limits';
import { sessionName } from './phrases';
import { DateBox } from './TextBox';
import { e } from './words';

interface DayBarProps {
  editor: Editor;
  planned: PlannedSession;
  content: ProgramContent;
}

/** The planned day itself: its date, its window, its session. */
export function DayBar({ editor, planned, content }: DayBarProps) {
  const { planned_id: id, day } = planned;
  const move = (date: LocalDate, focus: string) => {
    if (!date || date === day.date) return;
    const full = moveTo(editor, id, date);
    editor.say(full ?? e('dayMoved', { date: `${dayName(date)} ${dayAndMonth(date)}` }), full === null);
    focusSoon(focus);
  };
  const remove = () => {
    const place = placeOf(content, id);
    editor.edit((now) => removeDay(now, id));
    const after = editor.content.peek();
    const next = after && (idAt(after, place) ?? idAt(after, after.days.length - 1));
    editor.choice.value = { day: next, session: next ? null : day.session };
    editor.say(e('dayRemoved', { date: `${dayName(day.date)} ${dayAndMonth(day.date)}` }), true);
    focusSoon('session-heading');
  };
  return (
    <div class="ed-daybar" role="group" aria-label={e('thisDay')}>
      <DateBox id="day-date" label={e('dayDate')} value={day.date} onChange={(date) => move(date, 'day-date')} />
      <div class="field">
        <label for="day-session">{e('daySession')}</label>
        <Options id="day-session" value={day.session} onChange={(event) => { const session = event.currentTarget.value; editor.edit((now) => setDay(now, id, { session })); }}>
          {content.sessions.map((session) => <option key={session.key} value={session.key}>{sessionName(session)}</option>)}
        </Options>
      </div>
      <label class="ed-check">
        <Input type="checkbox" checked={day.fixed_day} onChange={(event) => { const fixed_day = event.currentTarget.checked; editor.edit((now) => setDay(now, id, { fixed_day })); }} />
        <span>{e('fixedDay')}<small>{day.fixed_day ? e('fixedDayOn') : e('fixedDayOff')}</small></span>
      </label>
      <div class="ed-row">
        <Button small id="day-earlier" onClick={() => move(addDays(day.date, -1), 'day-earlier')}>{e('dayEarlier')}</Button>
        <Button small id="day-later" onClick={() => move(addDays(day.date, 1), 'day-later')}>{e('dayLater')}</Button>
        <Button small kind="quiet" onClick={remove}>{e('removeDay')}</Button>
      </div>
    </div>
  );
}

/** Moves the day and keeps it in view. Answers why it could not, or null. */
function moveTo(editor: Editor, id: string, date: LocalDate): string | null {
  const content = editor.content.peek();
  if (content && onDate(content, date) >= PER_DATE_MAX) return e('dayFull', { date: dayAndMonth(date), n: PER_DATE_MAX });
  editor.edit((now) => moveDay(now, id, date));
  const after = editor.content.peek();
  if (after) editor.choice.value = { day: idAt(after, after.days.findLastIndex((one) => one.date === date)), session: null };
  return null;
}
