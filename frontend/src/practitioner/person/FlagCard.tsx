import { useEffect, useRef, useState } from 'preact/hooks';
import { dayShort } from '../../shared/dates';
import { Button } from '../../shared/form/Button';
import { Field } from '../../shared/form/Field';
import { decide } from '../api/calls';
import { draft, dropDraft } from '../api/drafts';
import type { Action, Decided, Flag } from '../api/types';
import { FailureLine } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';
import { answerWords, bodyOf, decisionWords, lacks, orderedAnswers, type Lacks } from './answers';

const KINDS = { published: 'rulePublished', derived: 'ruleDerived', house: 'ruleHouse' } as const;

function RuleLine({ flag }: { flag: Flag }) {
  const { authors, year, title } = flag.source;
  return (
    <p class="rule note soft">
      {t('openSince', { date: dayShort(flag.since) })} {t('ruleLine')} <i>{t(`rule_${flag.rule}`)}</i>, {t(KINDS[flag.kind])}
      {flag.kind === 'house' ? '.' : <>: {authors} {year}, <cite>{title}</cite>.</>}
    </p>
  );
}

const Evidence = ({ flag }: { flag: Flag }) => (
  <ul class="evidence" lang="en">
    {flag.evidence.map(({ event_id, sentence }) => <li key={event_id}>{sentence}</li>)}
  </ul>
);

function useAnswer(flag: Flag, onDecided: (decided: Decided, action: Action) => void) {
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
  return { note, message, missing, busy, failure, give };
}

function AnswerForm({ flag, onDecided }: { flag: Flag; onDecided: (decided: Decided, action: Action) => void }) {
  const { note, message, missing, busy, failure, give } = useAnswer(flag, onDecided);
  const [writing, setWriting] = useState(false);
  const actions = orderedAnswers(flag);
  // A message is read before it goes: "Write to them" opens its field, and is pressed again to send.
  const press = (action: Action) => (action === 'message' && !writing ? setWriting(true) : void give(action));
  const showsMessage = writing || flag.suggestion?.action === 'hold' || flag.suggestion?.action === 'message' || Boolean(missing.message);
  return (
    <div class="suggest-sheet">
      {flag.suggestion && <p><b>{t('suggestion')} <span lang="en">{flag.suggestion.sentence}</span></b></p>}
      {flag.suggestion && <p class="note soft" lang="en">{flag.suggestion.effect}</p>}
      <Field label={t('noteForRecord')} hint={t('noteForRecordHint')} name={`note.${flag.id}`} value={note.value} onInput={(text) => (note.value = text)} error={missing.note} />
      {showsMessage
        ? <Field multiline label={t('messageToClient')} hint={t('messageToClientHint')} name={`message.${flag.id}`} value={message.value}
            onInput={(text) => (message.value = text)} error={missing.message} />
        : actions.includes('hold') && <details class="quoted"><summary>{t('messageToClient')}</summary>
            <Field multiline label={t('messageToClient')} hint={t('messageToClientHint')} name={`message.${flag.id}`} value={message.value} onInput={(text) => (message.value = text)} />
          </details>}
      <FailureLine failure={failure} />
      <p class="sr" role="status">{busy ? t('answering') : ''}</p>
      <div class="answers">
        {actions.map((action, i) => (
          <Button key={action} small kind={i === 0 && flag.suggestion?.action === action ? 'main' : action === 'close' ? 'quiet' : 'other'} onClick={() => press(action)}>
            {answerWords(action, flag.rule)}
          </Button>
        ))}
      </div>
    </div>
  );
}

interface FlagCardProps {
  flag: Flag;
  /** It was asked for by its address: it takes the focus. */
  wanted: boolean;
  onDecided: (decided: Decided, action: Action) => void;
}

/** One finding: what shows it, where the rule comes from, what could be done, and the answers. The server's sentences are English. */
export function FlagCard({ flag, wanted, onDecided }: FlagCardProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (!wanted) return;
    heading.current?.focus();
    heading.current?.scrollIntoView({ block: 'start' });
  }, [wanted]);
  return (
    <section class="flag" id={`flag-${flag.id}`} aria-labelledby={`title-${flag.id}`}>
      <h3 id={`title-${flag.id}`} tabIndex={-1} ref={heading} lang="en">{flag.title}</h3>
      {flag.status === 'acknowledged' && <p class="note">{t('watching')}</p>}
      <Evidence flag={flag} />
      <RuleLine flag={flag} />
      {flag.decisions.map((decision) => <p class="note" key={decision.decided_at}>{decisionWords(decision)}</p>)}
      <AnswerForm flag={flag} onDecided={onDecided} />
    </section>
  );
}
