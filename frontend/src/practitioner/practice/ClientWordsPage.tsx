import { useRef } from 'preact/hooks';
import type { PracticeWords } from '../api/account';
import { useResource } from '../api/resource';
import type { Me } from '../api/types';
import { Button } from '../form/Button';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { ErrorSummary } from '../parts/ErrorSummary';
import { FailureLine, ReadFailure } from '../parts/status';
import { t } from '../words';
import { useClientWords } from './useClientWords';

const FIELDS = [
  { name: 'emergency_text', label: 'wrdEmergency', hint: 'wrdEmergencyHint' },
  { name: 'reply_time_text', label: 'wrdReply', hint: 'wrdReplyHint' },
] as const;

function Words({ read, reload }: { read: PracticeWords; reload: () => Promise<void> }) {
  const { form, dirty, busy, failure, attempt, errors, change, save, discard } = useClientWords(read, reload);
  const element = useRef<HTMLDivElement>(null);
  const submit = (event: Event) => {
    event.preventDefault();
    void save();
  };
  const leave = () => {
    discard();
    element.current?.querySelector('textarea')?.focus(); // the button that had the focus is gone
  };
  return (
    <div ref={element}>
      <Form onSubmit={submit} noValidate>
        <ErrorSummary errors={errors} attempt={attempt} />
        {FIELDS.map(({ name, label, hint }) => (
          <div key={name}>
            <Field multiline required name={name} label={t(label)} hint={t(hint)} autoComplete="off" value={form[name]} error={errors[name]}
              onInput={(text) => change({ ...form, [name]: text })} />
            {form[name] !== read[name] && <p class="soft note">{t('wrdNow', { text: read[name] })}</p>}
          </div>
        ))}
        <FailureLine failure={failure} />
        <p class="actions">
          <Button small kind="main" type="submit">{busy ? t('saving') : t('save')}</Button>{' '}
          {dirty && !busy && <Button small kind="quiet" onClick={leave}>{t('wrdDiscard')}</Button>}
        </p>
      </Form>
    </div>
  );
}

/** What clients read in the practice's own words, for its owners: whom to call, when it answers. */
export function ClientWordsPage() {
  const { data, asOf, failure, reload } = useResource<Me>('/me');
  return (
    <main class="form-page">
      <h1>{t('wrdTitle')}</h1>
      <p class="measure">{t('wrdText')}</p>
      <p class="measure soft">{t('wrdGiven')}</p>
      <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} />
      {!data && !failure && <p role="status">{t('loading')}</p>}
      {data && <Words read={data.practice} reload={reload} />}
    </main>
  );
}
