import { useEffect, useState } from 'preact/hooks';
import { decide } from '../api/calls';
import { draft, dropDraft } from '../api/drafts';
import type { Action, Decided, Flag } from '../api/types';
import { Button } from '../form/Button';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { FailureLine } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { Doing } from '../rights/Needs';
import { t } from '../words';
import { answerWords, bodyOf, giveWords, lacks, orderedAnswers, takesWords, type Lacks } from './answers';

interface Props {
  flag: Flag;
  onDecided: (decided: Decided, action: Action) => void;
}

function useAnswer({ flag, onDecided }: Props) {
  const note = draft(`note.${flag.id}`);
  const message = draft(`answer.${flag.id}`, t(`messageRule_${flag.rule}`));
  const [missing, setMissing] = useState<Lacks>({});
  const { busy, failure, run } = useWrite();
  const give = async (action: Action) => {
    const answer = { action, note: note.value, message: message.value };
    const found = lacks(answer);
    setMissing(found);
    const field = Object.keys(found)[0];
    if (field) return document.getElementsByName(`${field}.${flag.id}`)[0]?.focus();
    const decided = await run(() => decide(flag.id, bodyOf(answer)));
    if (!decided) return;
    dropDraft(`note.${flag.id}`);
    dropDraft(`answer.${flag.id}`);
    onDecided(decided, action);
  };
  return { flag, note, message, missing, setMissing, busy, failure, give };
}
type Answering = ReturnType<typeof useAnswer>;

const Note = ({ flag, note, missing }: Answering) => (
  <Field label={t('noteForRecord')} hint={t('noteForRecordHint')} name={`note.${flag.id}`} value={note.value} onInput={(text) => (note.value = text)} error={missing.note} />
);

/** The words of an answer that has some, and the button that gives it. */
function Words({ answering, action, onClose }: { answering: Answering; action: Action; onClose: () => void }) {
  const { flag, note, message, missing, busy, give } = answering;
  const isNote = action === 'close' || action === 'clear';
  const first = isNote ? 'note' : 'message';
  useEffect(() => document.getElementsByName(`${first}.${flag.id}`)[0]?.focus(), [action]);
  return (
    <Form class="answer-words" onSubmit={(event) => { event.preventDefault(); void give(action); }}>
      {isNote
        ? <Field label={t(action === 'clear' ? 'clearWhat' : 'closeWhy')} hint={t(action === 'clear' ? 'clearWhatHint' : 'closeWhyHint')} name={`note.${flag.id}`} value={note.value} onInput={(text) => (note.value = text)} error={missing.note} />
        : <Field multiline label={t('messageToClient')} hint={t('messageToClientHint')} name={`message.${flag.id}`} value={message.value} onInput={(text) => (message.value = text)} error={missing.message} />}
      {!isNote && <Note {...answering} />}
      <div class="answers"><Button small kind="main" type="submit" busy={busy}>{giveWords(action, flag.rule)}</Button> <Button small kind="quiet" onClick={onClose}>{t('cancel')}</Button></div>
    </Form>
  );
}

function Suggestion({ suggestion }: Flag) {
  if (!suggestion) return null;
  return (
    <div>
      <p><b>{t('suggestion')} <span lang="en">{suggestion.sentence}</span></b></p>
      <p class="note soft" lang="en">{suggestion.effect}</p>
    </div>
  );
}

/** What could be done and the answers: one main button at a time, and words only where an answer has some. */
export function AnswerForm(props: Props) {
  const { flag } = props;
  const answering = useAnswer(props);
  const [opened, setOpened] = useState<Action | null>(null);
  const [noting, setNoting] = useState(answering.note.value !== '');
  const show = (action: Action | null) => {
    answering.setMissing({});
    setOpened(action);
  };
  const press = (action: Action) => (takesWords(action) ? show(opened === action ? null : action) : void answering.give(action));
  const kindOf = (action: Action, i: number) => (i === 0 && !opened && flag.suggestion?.action === action ? 'main' : action === 'close' ? 'quiet' : 'other');
  return (
    <div class="suggest-sheet">
      <Suggestion {...flag} />
      <Doing><div class="answers">
        {orderedAnswers(flag).map((action, i) => (
          <Button key={action} small busy={answering.busy && !takesWords(action)} kind={kindOf(action, i)} {...(takesWords(action) && { 'aria-expanded': opened === action })} onClick={() => press(action)}>{answerWords(action, flag.rule)}</Button>
        ))}
        {!opened && <Button small kind="quiet" aria-expanded={noting} onClick={() => setNoting(!noting)}>{t('noteAdd')}</Button>}
      </div></Doing>
      {opened
        ? <Words answering={answering} action={opened} onClose={() => show(null)} />
        : noting && <Note {...answering} />}
      <FailureLine failure={answering.failure} />
      <p class={answering.busy ? 'note' : 'sr'} role="status">{answering.busy ? t('answering') : ''}</p>
    </div>
  );
}
