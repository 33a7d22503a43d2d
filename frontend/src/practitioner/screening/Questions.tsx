import { useState } from 'preact/hooks';
import { screenClient } from '../api/calls';
import { draft, dropDraft } from '../api/drafts';
import { refreshAbout } from '../api/resource';
import type { ScreeningQuestions } from '../api/types';
import { Button } from '../form/Button';
import { Form } from '../form/Form';
import { Input } from '../form/bare';
import { ErrorSummary } from '../parts/ErrorSummary';
import { FailureLine, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';
import { answersOf, missing, NOTHING_SAID, type Answering } from './answers';

interface AskProps<V extends string> {
  name: string;
  legend: string;
  help?: string;
  options: readonly { value: V; label: string }[];
  value: V | null;
  error: string | undefined;
  onChange: (value: V) => void;
  /** The server asks in English. */
  lang?: string;
}

function Ask<V extends string>({ name, legend, help, options, value, error, onChange, lang }: AskProps<V>) {
  return (
    <fieldset aria-invalid={error ? true : undefined} aria-describedby={[help && `${name}-help`, error && `${name}-error`].filter(Boolean).join(' ') || undefined}>
      <legend lang={lang}>{legend}</legend>
      {help && <p class="note soft" lang={lang} id={`${name}-help`}>{help}</p>}
      <div class="choices">
        {options.map((option) => (
          <label key={option.value}><Input type="radio" name={name} value={option.value} checked={value === option.value} onChange={() => onChange(option.value)} /><span>{option.label}</span></label>
        ))}
      </div>
      {error && <p class="error" id={`${name}-error`}>{error}</p>}
    </fieldset>
  );
}

function Fields({ questions, now, errors, onChange }: { questions: ScreeningQuestions; now: Answering; errors: ReturnType<typeof missing>; onChange: (now: Answering) => void }) {
  const yesNo = [{ value: 'yes', label: t('scrYes') }, { value: 'no', label: t('scrNo') }] as const;
  const levels = (['light_to_moderate', 'vigorous'] as const).map((value) => ({ value, label: t(`scr_${value}`) }));
  return (
    <>
      {questions.items.map(({ code, question, help }) => (
        <Ask key={code} lang="en" name={`q.${code}`} legend={question} help={help} options={yesNo} value={now.said[code] ?? null} error={errors[`q.${code}`]}
          onChange={(value) => onChange({ ...now, said: { ...now.said, [code]: value } })} />
      ))}
      <Ask name="q.intensity" legend={t('scrIntensity')} options={levels} value={now.intensity} error={errors['q.intensity']} onChange={(intensity) => onChange({ ...now, intensity })} />
    </>
  );
}

/** The questions, answered together with the client. */
export function Questions({ client, questions, onSaved }: { client: string; questions: ScreeningQuestions; onSaved: () => void }) {
  const kept = draft(`screening.${client}`);
  const now: Answering = kept.value ? JSON.parse(kept.value) : NOTHING_SAID;
  const [attempt, setAttempt] = useState(0);
  const { busy, failure, run } = useWrite();
  const errors = missing(questions.items, now);
  const submit = async (event: Event) => {
    event.preventDefault();
    setAttempt(attempt + 1);
    if (Object.keys(errors).length > 0) return;
    const { answers, details } = answersOf(questions.items, now);
    const saved = await run(() => screenClient(client, answers, details));
    if (!saved) return;
    dropDraft(`screening.${client}`);
    await refreshAbout(client);
    say(t('scrSaved'));
    onSaved();
  };
  return (
    <Form onSubmit={submit} noValidate>
      <ErrorSummary errors={attempt > 0 ? errors : {}} attempt={attempt} />
      <Fields questions={questions} now={now} errors={attempt > 0 ? errors : {}} onChange={(to) => (kept.value = JSON.stringify(to))} />
      <FailureLine failure={failure} />
      <p class="actions"><Button kind="main" small type="submit">{busy ? t('saving') : t('scrSave')}</Button></p>
    </Form>
  );
}
