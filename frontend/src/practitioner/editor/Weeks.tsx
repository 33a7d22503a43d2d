import { signal } from '@preact/signals';
import { useMemo, useState } from 'preact/hooks';
import { addDays, dayAndMonth, dayName, mondayOf } from '../../shared/dates';
import type { PlannedSession, ProgramContent } from '../../shared/program';
import { Button } from '../form/Button';
import { Press } from '../form/bare';
import { Looking } from '../rights/Needs';
import { AddDay } from './AddDay';
import { unplanned } from './choice';
import type { Editor } from './editor';
import { weeksOf, type Week } from './editDays';
import { focusSoon, isNarrow } from './focus';
import { facts, sessionName } from './phrases';
import { RepeatWeek } from './RepeatWeek';
import { e } from './words';

/** The weeks with their planned days; a week is opened to work in it, and what lies behind is folded away. */
export function Weeks({ editor }: { editor: Editor }) {
  const content = editor.content.value;
  const toggled = useMemo(() => signal<ReadonlyMap<string, boolean>>(new Map()), []);
  const [pastOpen, setPastOpen] = useState(false);
  if (!content) return null;
  const day = editor.shown.value.planned?.day.date ?? content.starts_on;
  const near = [mondayOf(day), addDays(mondayOf(day), 7)];
  const isOpen = (week: Week) => toggled.value.get(week.monday) ?? near.includes(week.monday);
  const toggle = (week: Week) => (toggled.value = new Map(toggled.value).set(week.monday, !isOpen(week)));
  const weeks = weeksOf(content);
  const past = weeks.filter((week) => week.monday < mondayOf(editor.today) && week.monday < mondayOf(day));
  const show = (week: Week) => <WeekOf key={week.monday} editor={editor} week={week} content={content} open={isOpen(week)} onToggle={() => toggle(week)} />;
  return (
    <nav class="ed-weeks" aria-label={e('weeks')}>
      {past.length > 1 && (
        <Looking><Press type="button" class="ed-week" aria-expanded={pastOpen} onClick={() => setPastOpen(!pastOpen)}>{e('weeksBefore', { n: past.length })}</Press></Looking>
      )}
      {(pastOpen || past.length < 2) && past.map(show)}
      {weeks.slice(past.length).map(show)}
      <Unplanned editor={editor} content={content} />
    </nav>
  );
}

interface WeekProps {
  editor: Editor;
  week: Week;
  content: ProgramContent;
  open: boolean;
  onToggle: () => void;
}

function WeekOf({ editor, week, content, open, onToggle }: WeekProps) {
  return (
    <section>
      <h2>
        <Looking><Press type="button" class="ed-week" aria-expanded={open} onClick={onToggle}>
          {weekName(week, editor.today)} <small>{e('weekCount', { n: week.planned.length })}</small>
        </Press></Looking>
      </h2>
      {open && <OpenWeek editor={editor} week={week} content={content} />}
    </section>
  );
}

function weekName(week: Week, today: string): string {
  const values = { number: week.number, date: dayAndMonth(week.monday) };
  return week.monday === mondayOf(today) ? e('weekNow', values) : e('weekFrom', values);
}

function OpenWeek({ editor, week, content }: { editor: Editor; week: Week; content: ProgramContent }) {
  return (
    <>
      {week.planned.length === 0 && <p class="soft">{e('weekEmpty')}</p>}
      <ol class="ed-days">
        {week.planned.map((one) => <li key={one.planned_id}><DayButton editor={editor} one={one} /></li>)}
      </ol>
      <AddDay editor={editor} monday={week.monday} />
      {week.planned.length > 0 && <RepeatWeek editor={editor} content={content} monday={week.monday} />}
    </>
  );
}

/** Choose a day; where the columns lie under each other, go to its session. */
export function choose(editor: Editor, day: string | null, session: string | null): void {
  editor.choice.value = { day, session };
  if (isNarrow()) focusSoon('session-heading');
}

function DayButton({ editor, one }: { editor: Editor; one: PlannedSession }) {
  const chosen = editor.shown.value.planned?.planned_id === one.planned_id;
  const today = one.day.date === editor.today;
  return (
    <Looking><Press type="button" class="ed-day" id={`day-${one.planned_id}`} aria-current={chosen ? 'true' : undefined} onClick={() => choose(editor, one.planned_id, null)}>
      <span>{dayName(one.day.date)}</span>
      <span>
        {sessionName(one.session)}
        <small>{[today ? e('today') : '', facts(one.session), one.day.fixed_day ? e('onThisDayOnly') : ''].filter(Boolean).join(', ')}</small>
      </span>
    </Press></Looking>
  );
}

function Unplanned({ editor, content }: { editor: Editor; content: ProgramContent }) {
  const sessions = unplanned(content);
  if (sessions.length === 0) return null;
  const shown = editor.shown.value.session;
  return (
    <section>
      <h2>{e('unplanned')}</h2>
      <ol class="ed-days">
        {sessions.map((session) => (
          <li key={session.key}>
            <Looking><Button small kind="quiet" aria-pressed={shown === session} onClick={() => choose(editor, null, session.key)}>{sessionName(session)}</Button></Looking>
          </li>
        ))}
      </ol>
    </section>
  );
}
