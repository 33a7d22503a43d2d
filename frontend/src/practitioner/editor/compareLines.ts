/** Two programs as lines of text that stand beside each other. */
import { dayAndMonth, dayName, fullDate } from '../../shared/dates';
import type { ProgramContent, Session } from '../../shared/program';
import type { Library } from '../exercises/entry';
import { endOf, weeksOf } from './editDays';
import { exerciseName, facts, prescriptionWords, sessionName } from './phrases';
import { coded, e } from './words';

export interface Line {
  /** The same in both programs for what is the same thing: "s1", "p4", a week's Monday. */
  id: string;
  /** What the line is about. */
  title: string;
  text: string;
}
export interface Pair {
  id: string;
  title: string;
  /** Null: not in this one. */
  mine: string | null;
  theirs: string | null;
  differs: boolean;
}

function sessionLines(session: Session, library: Library): Line[] {
  const details = session.kind === 'rest' ? [] : [e('effortWords', { effort: session.expected_effort }), session.expected_minutes === null ? '' : e('minutesAbout', { n: session.expected_minutes })];
  const text = [coded('kind', session.kind), facts(session), ...details, session.note].filter(Boolean).join(', ');
  const own = { id: session.key, title: sessionName(session), text };
  if (session.kind !== 'circuit') return [own];
  const list = session.prescriptions.map((one, i) => ({
    id: one.key,
    title: `${sessionName(session)}, ${exerciseName(one, library)}`,
    text: `${i + 1}. ${exerciseName(one, library)}: ${prescriptionWords(one, library)}`,
  }));
  return [own, ...list];
}

function dayLines(content: ProgramContent): Line[] {
  return weeksOf(content).map((week) => ({
    id: week.monday,
    title: e('weekFrom', { number: week.number, date: dayAndMonth(week.monday) }),
    text: week.planned.map((one) => `${dayName(one.day.date)} ${sessionName(one.session)}${one.day.fixed_day ? ` (${e('onThisDayOnly')})` : ''}`).join(', '),
  }));
}

/** The whole program, one line a thing. */
export function linesOf(content: ProgramContent, library: Library): Line[] {
  const end = endOf(content);
  return [
    { id: 'title', title: e('programName'), text: content.title },
    { id: 'goal', title: e('tripName'), text: content.goal ? e('frameTrip', { name: content.goal.name, date: fullDate(content.goal.date) }) : e('noTrip') },
    { id: 'starts_on', title: e('startsOn'), text: fullDate(content.starts_on) },
    { id: 'ends_on', title: e('endsOn'), text: end ? fullDate(end) : e('notKnown') },
    ...content.sessions.flatMap((session) => sessionLines(session, library)),
    ...dayLines(content),
  ];
}

/** Beside each other, in the order of mine; what only theirs has comes where theirs has it. */
export function pairs(mine: readonly Line[], theirs: readonly Line[]): Pair[] {
  const [ours, others] = [new Map(mine.map((line) => [line.id, line])), new Map(theirs.map((line) => [line.id, line]))];
  const order = mine.map((line) => line.id);
  theirs.forEach(({ id }, i) => {
    if (ours.has(id)) return;
    const before = theirs.slice(0, i).findLast((line) => order.includes(line.id));
    order.splice(before ? order.indexOf(before.id) + 1 : 0, 0, id);
  });
  return order.map((id) => {
    const [one, other] = [ours.get(id), others.get(id)];
    return { id, title: (one ?? other)?.title ?? '', mine: one?.text ?? null, theirs: other?.text ?? null, differs: one?.text !== other?.text };
  });
}
