import type { ProgramContent } from '../../shared/program';
import { failureFrom } from '../api/request';
import { t } from '../words';
import { updateClient } from '../api/calls';
import { readClient } from './calls';
import type { Kit } from '../api/types';
import { Button } from '../form/Button';
import { Link } from '../form/Link';
import { Doing } from '../rights/Needs';
import { missingKit, variantOf } from '../exercises/entry';
import type { Editor } from './editor';
import { idAt } from './editDays';
import { failureWords } from './failure';
import { focusSoon } from './focus';
import { fieldIds, mend, shownBy } from './pointer';
import type { Finding } from './types';
import { coded, e } from './words';

/** What does not fit: each with the way to its field, and the change that takes it away where there is one. */
export function Problems({ editor }: { editor: Editor }) {
  const checked = editor.checker.checked.value;
  const failure = editor.checker.failure.value;
  const problems = checked?.checks.problems ?? [];
  const unreadable = [...editor.unreadable.value];
  const errors = problems.filter((one) => one.severity === 'error').length + unreadable.length;
  return (
    <section aria-labelledby="problems-title" id="problems" tabIndex={-1}>
      <h2 id="problems-title" class="sr">{e('problemsTitle')}</h2>
      <p role="status"><b>{title(checked !== null, errors, problems.length + unreadable.length - errors)}</b></p>
      {failure && <p class="soft">{e('checkFailed')} {failureWords(failure)}</p>}
      {problems.length + unreadable.length > 0 && <ul class="ed-list">
        {unreadable.map(([id, wants]) => (
          <li key={id}>
            <b class="call">{e('error')}</b> {wants}{' '}
            <Button small kind="quiet" onClick={() => focusSoon(id)}>{e('goToField')}</Button>
          </li>
        ))}
        {checked && problems.map((one) => <Problem key={one.pointer + one.code} editor={editor} problem={one} of={checked.of} />)}
      </ul>}
    </section>
  );
}

/** What is wrong with no field, and is mended on the page of the screening. */
const SCREENING = ['not_screened', 'clearance_recommended', 'clearance_needed'];

function title(known: boolean, errors: number, warnings: number): string {
  if (!known) return e('checking');
  if (errors && warnings) return `${e('errorsCount', { n: errors })} ${e('warningsCount', { n: warnings })}`;
  if (errors) return e('errorsCount', { n: errors });
  return warnings ? e('warningsCount', { n: warnings }) : e('problemsNone');
}

function Problem({ editor, problem, of }: { editor: Editor; problem: Finding; of: ProgramContent }) {
  // Pointers and mends belong to the content that was looked over; a newer one is being looked over this moment.
  const current = editor.content.value === of;
  const { fix } = problem;
  const repair = () => {
    editor.edit((content) => mend(content, fix?.mends ?? []));
    editor.say(e('fixed', { label: fix?.label ?? '' }), true);
    focusSoon(...fieldIds(problem.pointer), 'problems');
  };
  return (
    <li>
      <b class={problem.severity === 'error' ? 'call' : ''}>{e(problem.severity)}</b> <span lang="en">{problem.message}</span>{' '}
      <Doing><span class="ed-row">
        {current && problem.pointer && <Button small kind="quiet" onClick={() => goTo(editor, problem.pointer)} aria-label={`${e('goToField')}: ${problem.message}`}>{e('goToField')}</Button>}
        {current && fix && <Button small onClick={repair}>{fix.label}</Button>}
        {SCREENING.includes(problem.code) && <Link class="btn small" to={`/clients/${editor.client.value.id}/screening`}>{t(problem.code === 'not_screened' ? 'scrTitle' : 'scrRecordClearance')}</Link>}
        {current && problem.code === 'kit_missing' && <KitIsThere editor={editor} pointer={problem.pointer} of={of} />}
      </span></Doing>
    </li>
  );
}

/** Brings the place into view and the focus to its field. */
export function goTo(editor: Editor, pointer: string): void {
  const content = editor.content.peek();
  if (!content) return;
  const { session, day } = shownBy(content, pointer);
  if (session && editor.shown.peek().session !== session) editor.choice.value = { day: null, session: session.key };
  if (day !== null) editor.choice.value = { day: idAt(content, day), session: null };
  focusSoon(...fieldIds(pointer), day === null ? 'session-heading' : 'day-date', 'session-heading');
}

/** The client has the missing kit after all: put it into their house, and look again. */
function KitIsThere({ editor, pointer, of }: { editor: Editor; pointer: string; of: ProgramContent }) {
  const [, , session, , place] = pointer.split('/');
  const circuit = of.sessions[Number(session)];
  const one = circuit?.kind === 'circuit' ? circuit.prescriptions[Number(place)] : undefined;
  const rung = one && variantOf(editor.library.get(one.exercise), one.variant);
  const missing = rung ? missingKit(rung.kit, editor.client.value.kit) : [];
  if (missing.length === 0) return null;
  const words = missing.map((kit) => coded('kit', kit)).join(', ');
  const without = (kit: readonly Kit[]) => kit.filter((one) => !missing.includes(one));
  const add = async () => {
    const takeBack = () => void setKit(editor, without, e('tookBack'));
    await setKit(editor, (kit) => [...without(kit), ...(missing as Kit[])], e('kitAdded', { kit: words }), takeBack);
    focusSoon(...fieldIds(pointer), 'problems');
  };
  return <Button small onClick={() => void add()}>{e('kitIsThere', { kit: words })}</Button>;
}

/** Changes the kit that the server knows now, so that what a colleague noted meanwhile stays. */
async function setKit(editor: Editor, change: (kit: readonly Kit[]) => Kit[], said: string, takeBack?: () => void): Promise<void> {
  const { id } = editor.client.peek();
  try {
    const { data, etag } = await readClient(id);
    editor.client.value = await updateClient(id, { kit: change(data.kit) }, etag);
    editor.say(said, takeBack ?? false);
    editor.checker.want(editor.content.peek(), true);
  } catch (error) {
    editor.say(failureWords(failureFrom(error)));
  }
}
