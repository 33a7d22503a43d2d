import { useState } from 'preact/hooks';
import { Dialog } from '../../shared/Dialog';
import { t } from '../words';
import { draft, dropDraft } from '../api/drafts';
import { isProblem } from '../api/request';
import { Button } from '../form/Button';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { Link } from '../form/Link';
import type { Editor } from './editor';
import { failureWords } from './failure';
import { focusSoon } from './focus';
import { publishNow, type Outcome } from './publishing';
import { e } from './words';

/** The last look before a version goes out. */
export function PublishDialog({ editor, open, onClose }: { editor: Editor; open: boolean; onClose: () => void }) {
  return (
    <Dialog open={open} title={e('publish', { number: editor.nextNumber.value })} onClose={onClose}>
      {whyNot(editor) ? <NotYet editor={editor} onClose={onClose} /> : <Ready editor={editor} onClose={onClose} />}
    </Dialog>
  );
}

/** Why nothing can be published now; null when it can. */
function whyNot(editor: Editor): string | null {
  const checked = editor.checker.checked.value;
  const checks = checked?.checks;
  const errors = (checks?.problems ?? []).filter((one) => one.severity === 'error').length + editor.unreadable.value.size;
  if (errors > 0) return e('publishErrors', { n: errors });
  if (editor.base.value && (!editor.changed.value || (checked?.of === editor.content.value && checks?.changes.length === 0))) return e('publishSame', { number: editor.base.value.number });
  return null;
}

function NotYet({ editor, onClose }: { editor: Editor; onClose: () => void }) {
  const leave = () => {
    onClose();
    focusSoon('problems');
  };
  return (
    <>
      <p>{whyNot(editor)}</p>
      {editor.checker.checked.value?.checks.problems.some(({ code }) => code === 'clearance_needed') && <p><ToClearance client={editor.client.value.id} /></p>}
      <div class="foot"><Button kind="main" onClick={leave}>{e('backToProgram')}</Button></div>
    </>
  );
}

function Ready({ editor, onClose }: { editor: Editor; onClose: () => void }) {
  const id = editor.client.value.id;
  const note = draft(`publish-note-${id}`);
  const message = draft(`publish-message-${id}`);
  const [busy, setBusy] = useState(false);
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  const send = async () => {
    if (busy) return;
    setBusy(true);
    const result = await publishNow(editor, note.value, message.value);
    setBusy(false);
    setOutcome(result);
    if (result.kind === 'stale') onClose();
    if (result.kind === 'published') done(editor, result, onClose);
  };
  return (
    <Form class="ed-dialog" onSubmit={(event) => { event.preventDefault(); void send(); }}>
      <Summary editor={editor} />
      <Field label={e('messageLabel')} hint={e('messageHint')} multiline value={message.value} onInput={(text) => (message.value = text)} />
      <Field label={e('noteLabel')} hint={e('noteRecordHint')} multiline value={note.value} onInput={(text) => (note.value = text)} />
      <div role="alert">{outcome?.kind === 'failed' && <p class="error">{failureWords(outcome.failure)} {needsClearance(outcome) && <ToClearance client={id} />}</p>}</div>
      <p role="status">{busy ? e('publishing') : ''}</p>
      <div class="foot">
        <Button kind="main" type="submit" busy={busy}>{e('publish', { number: editor.nextNumber.value })}</Button>
        <Button onClick={onClose}>{e('cancel')}</Button>
      </div>
    </Form>
  );
}

const needsClearance = ({ failure }: Extract<Outcome, { kind: 'failed' }>): boolean => isProblem(failure, 'clearance-needed');

const ToClearance = ({ client }: { client: string }) => (
  <>{t('scrNotPublished')} <Link to={`/clients/${client}/screening`}>{t('scrRecordClearance')}</Link></>
);

function Summary({ editor }: { editor: Editor }) {
  const checks = editor.checker.checked.value?.checks;
  const warnings = checks?.problems.length ?? 0;
  return (
    <>
      <p>{e('publishText', { name: editor.client.value.display_name })}</p>
      <ul class="ed-plain" lang="en">{checks?.changes.map((sentence) => <li key={sentence}>{sentence}</li>)}</ul>
      {warnings > 0 && <p>{e('publishWarnings', { n: warnings })}</p>}
    </>
  );
}

function done(editor: Editor, { number, messageFailed }: Extract<Outcome, { kind: 'published' }>, onClose: () => void): void {
  const id = editor.client.peek().id;
  dropDraft(`publish-note-${id}`);
  if (!messageFailed) dropDraft(`publish-message-${id}`);
  const words = e('published', { number });
  editor.say(messageFailed ? `${words} ${e('messageFailed', { reason: failureWords(messageFailed) })}` : words);
  onClose();
}
