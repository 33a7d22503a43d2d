import { useEffect, useState } from 'preact/hooks';
import { changePassword } from '../api/account';
import { isProblem } from '../api/request';
import { refreshAll } from '../api/resource';
import { me } from '../api/session';
import { Button } from '../form/Button';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { Input } from '../form/bare';
import { ErrorSummary, type FieldErrors } from '../parts/ErrorSummary';
import { failureWords } from '../parts/failureWords';
import { say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';

/** A new password, for who knows the old one. */
export function Password() {
  const [current, setCurrent] = useState('');
  const [fresh, setFresh] = useState('');
  const [shown, setShown] = useState(false);
  const [errors, setErrors] = useState<FieldErrors>({});
  const [attempt, setAttempt] = useState(0);
  const { busy, failure, run } = useWrite();
  const submit = async (event: Event) => {
    event.preventDefault();
    const found: FieldErrors = {};
    if (!current) found['current-password'] = t('passwordMissing');
    if (!fresh) found['new-password'] = t('pwNewMissing');
    else if ([...fresh].length < 12) found['new-password'] = t('problemPasswordLength');
    setErrors(found);
    setAttempt(attempt + 1);
    if (Object.keys(found).length > 0 || !(await run(() => changePassword(current, fresh)))) return;
    setCurrent('');
    setFresh('');
    say(t('pwChanged'));
    refreshAll();
  };
  const wrong = isProblem(failure, 'wrong-password');
  const told: FieldErrors = failure ? { [wrong ? 'current-password' : 'new-password']: failureWords(failure) } : errors;
  useEffect(() => void (failure && setAttempt((before) => before + 1)), [failure]);
  const type = shown ? 'text' : 'password';
  return (
    <Form onSubmit={submit} noValidate>
      <ErrorSummary errors={told} attempt={attempt} />
      <Input type="hidden" name="username" autoComplete="username" value={me.value?.practitioner.email} />
      <Field label={t('pwCurrent')} name="current-password" type={type} autoComplete="current-password" required value={current} onInput={setCurrent}
        error={told['current-password']} />
      <Field label={t('pwNew')} hint={t('pwNewHint')} name="new-password" type={type} autoComplete="new-password" required value={fresh} onInput={setFresh}
        error={told['new-password']} />
      <label class="check"><Input type="checkbox" checked={shown} onChange={(event) => setShown(event.currentTarget.checked)} /> {t('pwShow')}</label>
      <p class="actions"><Button small type="submit">{busy ? t('saving') : t('pwChange')}</Button></p>
    </Form>
  );
}
