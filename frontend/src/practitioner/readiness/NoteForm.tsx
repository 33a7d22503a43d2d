import { useState } from 'preact/hooks';
import { signReadiness } from '../api/calls';
import { draft, dropDraft } from '../api/drafts';
import { failureFrom, type Failure } from '../api/request';
import { refreshAbout } from '../api/resource';
import { me } from '../api/session';
import type { Readiness, Verdict } from '../api/types';
import { Button } from '../form/Button';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { Input } from '../form/bare';
import { ErrorSummary } from '../parts/ErrorSummary';
import { FailureLine, say } from '../parts/status';
import { t } from '../words';

const VERDICTS: readonly Verdict[] = ['go', 'adapt', 'defer'];
const isStale = (failure: Failure): boolean => failure.kind === 'problem' && failure.problem.status === 412;

function Decide({ value, error, onChange }: { value: string; error: string | undefined; onChange: (value: Verdict) => void }) {
  return (
    <fieldset aria-invalid={error ? true : undefined} aria-describedby={error ? 'verdict-error' : undefined}>
      <legend>{t('rdyVerdict')}</legend>
      <div class="choices">
        {VERDICTS.map((one) => (
          <label key={one}><Input type="radio" name="verdict" value={one} checked={value === one} onChange={() => onChange(one)} /><span>{t(`rdyVerdict_${one}`)}</span></label>
        ))}
      </div>
      {error && <p class="error" id="verdict-error">{error}</p>}
    </fieldset>
  );
}

/** Signs for what the page showed; when that has changed meanwhile, the page shows it anew, keeps the words and asks again. */
function useSigning(client: string, digest: string) {
  const verdict = draft(`readiness.verdict.${client}`);
  const words = draft(`readiness.words.${client}`);
  const [busy, setBusy] = useState(false);
  const [failure, setFailure] = useState<Failure | null>(null);
  const [stale, setStale] = useState(false);
  const send = async () => {
    await signReadiness(client, { verdict: verdict.value as Verdict, words: words.value.trim(), digest });
    ['verdict', 'words'].forEach((field) => dropDraft(`readiness.${field}.${client}`));
    say(t('rdySignedNow'));
  };
  const sign = async () => {
    if (busy) return;
    setBusy(true);
    setFailure(null);
    setStale(false);
    try {
      await send();
    } catch (error) {
      const found = failureFrom(error);
      if (isStale(found)) setStale(true);
      else setFailure(found);
    }
    await refreshAbout(client);
    setBusy(false);
  };
  return { verdict, words, busy, failure, stale, sign };
}

/** Go, go with changes, or not yet: with reasons, signed by name. */
export function NoteForm({ client, readiness }: { client: string; readiness: Readiness }) {
  const { verdict, words, busy, failure, stale, sign } = useSigning(client, readiness.digest);
  const [attempt, setAttempt] = useState(0);
  const errors = attempt === 0 ? {} : {
    ...(!verdict.value && { verdict: t('rdyVerdictMissing') }),
    ...(!words.value.trim() && { words: t('rdyWordsMissing') }),
  };
  const submit = async (event: Event) => {
    event.preventDefault();
    if (!verdict.value || !words.value.trim()) return setAttempt(attempt + 1);
    setAttempt(0);
    await sign();
  };
  const name = me.value?.practitioner.display_name;
  return (
    <section aria-labelledby="sign" class="screen-only">
      <h2 id="sign">{t(readiness.notes.length > 0 ? 'rdySignAgain' : 'rdySignTitle')}</h2>
      {readiness.shown.trip === null ? <p class="soft">{t('rdyNoTripNote')}</p> : (
        <>
          <p>{t('rdySignText')}</p>
          <Form onSubmit={submit} noValidate>
            <ErrorSummary errors={errors} attempt={attempt} />
            <Decide value={verdict.value} error={'verdict' in errors ? errors.verdict : undefined} onChange={(to) => (verdict.value = to)} />
            <Field label={t('rdyWords')} hint={t('rdyWordsHint')} name="words" multiline required value={words.value} onInput={(text) => (words.value = text)} error={'words' in errors ? errors.words : null} />
            <div role="alert">{stale && <p class="error">{t('rdyStale')}</p>}</div>
            <FailureLine failure={failure} />
            <p class="actions"><Button kind="main" small type="submit">{busy ? t('saving') : name ? t('rdySign', { name }) : t('rdySignPlain')}</Button></p>
          </Form>
        </>
      )}
    </section>
  );
}
