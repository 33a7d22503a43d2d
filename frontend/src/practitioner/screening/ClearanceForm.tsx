import { useState } from 'preact/hooks';
import { recordClearance } from '../api/calls';
import { draft, dropDraft } from '../api/drafts';
import { refreshAbout } from '../api/resource';
import { Button } from '../form/Button';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { FailureLine, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';

/** Who has said that the client may train. */
export function ClearanceForm({ client }: { client: string }) {
  const by = draft(`clearance.by.${client}`);
  const on = draft(`clearance.on.${client}`);
  const note = draft(`clearance.note.${client}`);
  const [attempted, setAttempted] = useState(false);
  const { busy, failure, run } = useWrite();
  const submit = async (event: Event) => {
    event.preventDefault();
    setAttempted(true);
    if (!by.value.trim()) return document.getElementsByName('given_by')[0]?.focus();
    const kept = await run(async () => [await recordClearance(client, { given_by: by.value.trim(), given_on: on.value || null, note: note.value.trim() })]);
    if (!kept) return;
    ['by', 'on', 'note'].forEach((field) => dropDraft(`clearance.${field}.${client}`));
    say(t('scrClearanceSaved'));
    await refreshAbout(client);
  };
  return (
    <section aria-labelledby="clearance">
      <h2 id="clearance">{t('scrClearanceTitle')}</h2>
      <p>{t('scrClearanceText')}</p>
      <Form onSubmit={submit} noValidate>
        <Field label={t('scrGivenBy')} hint={t('scrGivenByHint')} name="given_by" autoComplete="off" required value={by.value} onInput={(text) => (by.value = text)} error={attempted && !by.value.trim() ? t('scrGivenByMissing') : null} />
        <Field label={t('scrGivenOn')} hint={t('scrGivenOnHint')} name="given_on" type="date" value={on.value} onInput={(text) => (on.value = text)} />
        <Field label={t('scrClearanceNote')} name="clearance_note" multiline value={note.value} onInput={(text) => (note.value = text)} />
        <FailureLine failure={failure} />
        <p class="actions"><Button kind="main" small type="submit">{busy ? t('saving') : t('scrClearanceSave')}</Button></p>
      </Form>
    </section>
  );
}
