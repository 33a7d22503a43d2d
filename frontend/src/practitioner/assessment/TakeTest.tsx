import { useState } from 'preact/hooks';
import { recordTest, withdrawTest } from '../api/calls';
import { draft, dropDraft } from '../api/drafts';
import { refreshAbout } from '../api/resource';
import type { Test } from '../api/types';
import { Button } from '../form/Button';
import { Field, Select } from '../form/Field';
import { Form } from '../form/Form';
import { Input } from '../form/bare';
import { ErrorSummary } from '../parts/ErrorSummary';
import { FailureLine, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { Looking, useMay } from '../rights/Needs';
import { t } from '../words';
import { entryErrors, entryOf, NOTHING_TYPED, type Typed } from './entry';
import { WatchBox } from './WatchBox';

const Protocol = ({ test }: { test: Test }) => (
  <>
    <h3>{t('tstProtocol')}</h3>
    <ol lang="en">{test.protocol.map((step) => <li key={step}>{step}</li>)}</ol>
    <div class="urgent"><b>{t('tstCautions')}</b><ul lang="en">{test.cautions.map((caution) => <li key={caution}>{caution}</li>)}</ul></div>
    <p class="note soft">{test.mdc === null ? t('tstNoMdc') : t('tstMdc', { value: test.mdc, unit: test.unit })}</p>
  </>
);

function Side({ value, error, onChange }: { value: Typed['side']; error: string | undefined; onChange: (side: 'left' | 'right') => void }) {
  return (
    <fieldset aria-invalid={error ? true : undefined} aria-describedby={error ? 'side-error' : undefined}>
      <legend>{t('tstSide')}</legend>
      <div class="choices">
        {(['left', 'right'] as const).map((side) => (
          <label key={side}><Input type="radio" name="side" value={side} checked={value === side} onChange={() => onChange(side)} /><span>{t(`tst_${side}`)}</span></label>
        ))}
      </div>
      {error && <p class="error" id="side-error">{error}</p>}
    </fieldset>
  );
}

/** Takes a result back, or the taking back: recorded again as it was. */
export async function takeBack(client: string, id: string): Promise<void> {
  await withdrawTest(id);
  await refreshAbout(client);
}

function Entry({ client, test }: { client: string; test: Test }) {
  const name = `test.${client}.${test.code}`;
  const kept = draft(name);
  const typed: Typed = kept.value ? JSON.parse(kept.value) : NOTHING_TYPED;
  const set = (change: Partial<Typed>) => void (kept.value = JSON.stringify({ ...typed, ...change }));
  const [attempt, setAttempt] = useState(0);
  const { busy, failure, run } = useWrite();
  const found = entryErrors(test, typed);
  const errors = attempt > 0 ? found : {};
  const submit = async (event: Event) => {
    event.preventDefault();
    setAttempt(attempt + 1);
    if (Object.keys(found).length > 0) return;
    const result = await run(() => recordTest(client, entryOf(test, typed)));
    if (!result) return;
    dropDraft(name);
    setAttempt(0);
    await refreshAbout(client);
    say(t('tstSaved', { reading: result.reading }), () => void run(async () => {
      await takeBack(client, result.id);
      say(t('tstWithdrawn'));
    }));
  };
  const isTimed = test.kind === 'seconds' || test.counter_seconds !== null;
  return (
    <Form onSubmit={submit} noValidate>
      <ErrorSummary errors={errors} attempt={attempt} />
      {test.sides && <Side value={typed.side} error={errors.side} onChange={(side) => set({ side })} />}
      {isTimed && <WatchBox limitS={test.counter_seconds} onStop={(seconds) => test.kind === 'seconds' && set({ value: String(Math.min(seconds, test.range.high)) })} />}
      <Field label={t('tstValue')} hint={t('tstValueHint', { ...test.range, unit: test.unit })} name="value" inputMode="decimal" autoComplete="off" unit={test.unit} value={typed.value} onInput={(value) => set({ value })} error={errors.value} />
      <Field label={t('tstDay')} hint={t('tstDayHint')} name="taken_on" type="date" value={typed.taken_on} onInput={(taken_on) => set({ taken_on })} />
      <Field label={t('tstHow')} hint={t('tstHowHint')} name="how" autoComplete="off" value={typed.how} onInput={(how) => set({ how })} />
      <Field label={t('tstNote')} name="note" multiline value={typed.note} onInput={(note) => set({ note })} />
      <FailureLine failure={failure} />
      <p class="actions"><Button kind="main" small type="submit">{busy ? t('saving') : t('tstSave')}</Button></p>
    </Form>
  );
}

/** Choose a test, read how it is done, take it, keep the result. */
export function TakeTest({ client, tests }: { client: string; tests: readonly Test[] }) {
  const [code, setCode] = useState<string>(tests[0]?.code ?? '');
  const test = tests.find((one) => one.code === code);
  return (
    <section aria-labelledby="take">
      <h2 id="take">{t(useMay() ? 'tstTake' : 'tstRead')}</h2>
      <Looking><Select label={t('tstWhich')} value={code} options={tests.map((one) => ({ value: one.code as string, label: one.name }))} onChange={setCode} /></Looking>
      {test && <Protocol test={test} />}
      {test && <Entry key={code} client={client} test={test} />}
    </section>
  );
}
