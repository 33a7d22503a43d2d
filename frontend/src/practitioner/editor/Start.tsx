import { useEffect, useState } from 'preact/hooks';
import { addDays, daysBetween, fullDate } from '../../shared/dates';
import { query } from '../../shared/router';
import type { ProgramContent } from '../../shared/program';
import { failureFrom, type Failure } from '../api/request';
import { Button } from '../form/Button';
import { Form } from '../form/Form';
import { Input } from '../form/bare';
import { layOut, readTemplates } from './calls';
import { firstFrom } from './choice';
import type { Editor } from './editor';
import { failureWords } from './failure';
import { focusIfLost } from './focus';
import { SaidLine } from './SaidLine';
import { DateBox, TextBox } from './TextBox';
import { templateFacts } from '../templates/facts';
import type { Template } from './types';
import { e } from './words';

/** Weeks offered for a program without a trip. House: a starting value. */
const WEEKS_START = 12;
const EMPTY = '';

interface StartProps {
  editor: Editor;
  onDone: () => void;
  /** There is a program to go back to. */
  canLeave: boolean;
}

/** A new program: what it leads up to, when it begins, and what it begins from. */
export function Start({ editor, onDone, canLeave }: StartProps) {
  const form = useStart(editor, onDone);
  useEffect(() => focusIfLost('start-heading'), []);
  return (
    <Form class="ed-start" onSubmit={(event) => { event.preventDefault(); void form.begin(); }}>
      <h1 id="start-heading" tabIndex={-1}>{e('startTitle', { name: editor.client.value.display_name })}</h1>
      <SaidLine editor={editor} />
      {canLeave ? <p>{e('startOver')}</p> : <p>{e('startText')}</p>}
      {!canLeave && editor.canUndo.value && <p><Button small onClick={() => (editor.undo(), editor.say(e('tookBack')))}>{e('undoDiscard')}</Button></p>}
      <fieldset class="ed-fields">
        <legend>{e('startWhen')}</legend>
        <DateBox id="start-from" label={e('startsOn')} value={form.startsOn} required onChange={form.setStartsOn} />
        <TextBox id="start-trip" label={e('tripName')} hint={e('tripHint')} value={form.trip} onChange={form.setTrip} />
        {form.trip
          ? <DateBox id="start-day" label={e('tripDate')} hint={e('tripDateHint')} value={form.tripDay} onChange={form.setTripDay} />
          : <DateBox id="start-to" label={e('endsOn')} value={form.endsOn} onChange={form.setEndsOn} />}
      </fieldset>
      {form.length && <p>{form.length}</p>}
      <TemplateChoice templates={form.templates} failure={form.templatesFailure} chosen={form.template} onChoose={form.setTemplate} />
      <p role="alert" class="error">{form.failure && failureWords(form.failure)}</p>
      <p class="ed-row">
        <Button kind="main" type="submit">{e('startBegin')}</Button>
        {canLeave && <Button kind="quiet" onClick={onDone}>{e('cancel')}</Button>}
      </p>
    </Form>
  );
}

interface ChoiceProps {
  templates: readonly Template[] | null;
  failure: Failure | null;
  chosen: string;
  onChoose: (id: string) => void;
}

function TemplateChoice({ templates, failure, chosen, onChoose }: ChoiceProps) {
  const option = (id: string, name: string, about: string, facts: string) => (
    <label key={id}>
      <Input type="radio" name="template" value={id} checked={chosen === id} onChange={() => onChoose(id)} />
      <span><b>{name}</b>{about && <small>{about}</small>}<small>{facts}</small></span>
    </label>
  );
  return (
    <fieldset class="ed-templates">
      <legend>{e('startFrom')}</legend>
      {failure && <p role="alert">{failureWords(failure)}</p>}
      {!templates && !failure && <p role="status">{e('loading')}</p>}
      {option(EMPTY, e('startEmpty'), '', e('startEmptyText'))}
      {templates?.map((one) => option(one.id, one.name, one.about, templateFacts(one)))}
    </fieldset>
  );
}

function emptyProgram(frame: Pick<ProgramContent, 'starts_on' | 'ends_on' | 'goal'>): ProgramContent {
  return { title: frame.goal ? e('programFor', { trip: frame.goal.name }) : e('programHome'), ...frame, sessions: [], days: [] };
}

function useStart(editor: Editor, onDone: () => void) {
  const [startsOn, setStartsOn] = useState(editor.today);
  const [endsOn, setEndsOn] = useState(addDays(editor.today, WEEKS_START * 7 - 1));
  const goal = editor.content.peek()?.goal ?? null;
  const [trip, setTrip] = useState(goal?.name ?? '');
  const [tripDay, setTripDay] = useState(goal?.date ?? '');
  const [template, setTemplate] = useState(query.value.get('template') ?? EMPTY);
  const [failure, setFailure] = useState<Failure | null>(null);
  const [templates, templatesFailure] = useTemplates();

  const frame = {
    starts_on: startsOn,
    ends_on: trip ? null : endsOn || null,
    goal: trip && tripDay ? { name: trip, date: tripDay } : null,
  };
  const take = (content: ProgramContent) => {
    editor.replace(content);
    editor.choice.value = { day: firstFrom(content, startsOn)?.planned_id ?? null, session: null };
    onDone();
  };
  const begin = async () => {
    try {
      setFailure(null);
      take(template === EMPTY ? emptyProgram(frame) : await layOut(editor.client.value.id, { template, ...frame }));
    } catch (error) {
      setFailure(failureFrom(error));
    }
  };
  const last = frame.ends_on ?? (frame.goal ? addDays(frame.goal.date, -1) : null);
  const days = last && startsOn ? daysBetween(startsOn, last) + 1 : 0;
  const length = last && days > 0 ? e('startLength', { n: Math.ceil(days / 7), until: fullDate(last) }) : null;
  return { startsOn, setStartsOn, endsOn, setEndsOn, trip, setTrip, tripDay, setTripDay, template, setTemplate, templates, templatesFailure, failure, begin, length };
}

/** The templates, asked for once. */
export function useTemplates(): [Template[] | null, Failure | null] {
  const [templates, setTemplates] = useState<Template[] | null>(null);
  const [failure, setFailure] = useState<Failure | null>(null);
  useEffect(() => {
    readTemplates().then(({ data }) => setTemplates(data.items), (error: unknown) => setFailure(failureFrom(error)));
  }, []);
  return [templates, failure];
}
