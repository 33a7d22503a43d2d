import { useState } from 'preact/hooks';
import { navigate } from '../../shared/router';
import { createClient } from '../api/calls';
import { me } from '../api/session';
import { Button, ButtonLink } from '../form/Button';
import { Form } from '../form/Form';
import { ErrorSummary } from '../parts/ErrorSummary';
import { FailureLine, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';
import { ClientFieldSet } from './ClientFields';
import { emptyForm, fieldsOf, formErrors } from './fields';
import { formDraft } from './formDraft';

/** Take on a client; next comes their phone. */
export function NewClientPage() {
  const kept = formDraft('new');
  const form = kept.read() ?? emptyForm(me.value?.practice.time_zone ?? 'UTC');
  const [attempt, setAttempt] = useState(0);
  const { busy, failure, run } = useWrite();
  const errors = attempt > 0 ? formErrors(form, new Date().getFullYear()) : {};
  const submit = async (event: Event) => {
    event.preventDefault();
    setAttempt(attempt + 1);
    if (Object.keys(formErrors(form, new Date().getFullYear())).length > 0) return;
    const made = await run(() => createClient(fieldsOf(form)));
    if (!made) return;
    kept.drop();
    say(t('clientAdded', { name: made.display_name }));
    navigate(`/clients/${made.id}/phones`);
  };
  return (
    <main class="form-page">
      <h1>{t('newClientTitle')}</h1>
      <Form onSubmit={submit} noValidate>
        <ErrorSummary errors={errors} attempt={attempt} />
        <ClientFieldSet form={form} errors={errors} onChange={kept.keep} />
        <FailureLine failure={failure} />
        <p class="actions"><Button kind="main" small type="submit">{busy ? t('saving') : t('addClient')}</Button> <ButtonLink small kind="quiet" to="/">{t('cancel')}</ButtonLink></p>
      </Form>
    </main>
  );
}
