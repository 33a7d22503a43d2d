import { useState } from 'preact/hooks';
import { addDays, dayAndMonth, type LocalDate } from '../../shared/dates';
import type { ProgramContent } from '../../shared/program';
import { Button } from '../form/Button';
import { Options } from '../form/bare';
import type { Editor } from './editor';
import { repeatWeek, weeksAfter } from './editDays';
import { focusSoon } from './focus';
import { e } from './words';

/** "Use this week for the following weeks": how many of them, then one step of undo. */
export function RepeatWeek({ editor, content, monday }: { editor: Editor; content: ProgramContent; monday: LocalDate }) {
  const [open, setOpen] = useState(false);
  const left = weeksAfter(content, monday);
  const [weeks, setWeeks] = useState(left);
  const id = `repeat-${monday}`;
  if (left === 0) return null;
  const start = () => {
    setWeeks(left);
    setOpen(true);
    focusSoon(`${id}-weeks`);
  };
  const use = () => {
    editor.edit((now) => repeatWeek(now, monday, weeks));
    editor.say(e('weekRepeated', { n: weeks, until: dayAndMonth(addDays(monday, 7 * weeks + 6)) }), true);
    setOpen(false);
    focusSoon(id);
  };
  if (!open) return <Button small kind="quiet" id={id} onClick={start}>{e('repeatWeek')}</Button>;
  return (
    <div class="ed-add" role="group" aria-label={e('repeatWeek')}>
      <div class="field">
        <label for={`${id}-weeks`}>{e('repeatHowMany')}</label>
        <Options id={`${id}-weeks`} value={String(weeks)} onChange={(event) => setWeeks(Number(event.currentTarget.value))}>
          {Array.from({ length: left }, (_, i) => left - i).map((n) => (
            <option key={n} value={String(n)}>{e('repeatUntil', { n, until: dayAndMonth(addDays(monday, 7 * n + 6)) })}</option>
          ))}
        </Options>
      </div>
      <p class="note soft">{e('repeatNote')}</p>
      <p class="ed-row">
        <Button small onClick={use}>{e('repeatUse')}</Button>
        <Button small kind="quiet" onClick={() => (setOpen(false), focusSoon(id))}>{e('cancel')}</Button>
      </p>
    </div>
  );
}
