import { useEffect, useRef, useState } from 'preact/hooks';
import { inviteColleague, type ColleagueLink, type Role } from '../api/account';
import { confirmed } from '../api/confirm';
import { Button } from '../form/Button';
import { Choices } from '../form/Choices';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { ErrorSummary, type FieldErrors } from '../parts/ErrorSummary';
import { FailureLine } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';
import { MadeLink } from './MadeLink';
import { roleOptions } from './roles';

function errorsOf(name: string, email: string): FieldErrors {
  const errors: FieldErrors = {};
  if (!name.trim()) errors['colleague-name'] = t('pplNameMissing');
  if (!email.trim()) errors['colleague-email'] = t('pplEmailMissing');
  else if (!/^[^@\s]+@[^@\s]+$/.test(email.trim())) errors['colleague-email'] = t('emailOdd');
  return errors;
}

/** When the link is closed, the focus is where the next colleague is typed: the button that had it is gone. */
function useFocusBack(link: object | null) {
  const before = useRef(link);
  useEffect(() => {
    if (before.current && !link) document.getElementsByName('colleague-name')[0]?.focus();
    before.current = link;
  }, [link]);
}

/** Makes a link by which one colleague joins, and shows it once. */
export function Invite({ onInvited }: { onInvited: () => void }) {
  const [name, setName] = useState('');
  const [email, setEmail] = useState('');
  const [role, setRole] = useState<Role>('practitioner');
  const [attempt, setAttempt] = useState(0);
  const [errors, setErrors] = useState<FieldErrors>({});
  const [made, setMade] = useState<{ name: string; link: ColleagueLink } | null>(null);
  const { busy, failure, run } = useWrite();
  useFocusBack(made);
  const submit = async (event: Event) => {
    event.preventDefault();
    const found = errorsOf(name, email);
    setErrors(found);
    setAttempt(attempt + 1);
    if (Object.keys(found).length > 0) return;
    const link = await run(() => confirmed(() => inviteColleague({ display_name: name, email: email.trim(), role })));
    if (!link) return;
    setMade({ name: name.trim(), link });
    setName('');
    setEmail('');
    onInvited();
  };
  if (made) return <MadeLink {...made} onClose={() => setMade(null)} />;
  return (
    <Form onSubmit={submit} noValidate>
      <ErrorSummary errors={errors} attempt={attempt} />
      <Field label={t('pplName')} hint={t('pplNameHint')} name="colleague-name" autoComplete="off" required value={name} onInput={setName} error={errors['colleague-name']} />
      <Field label={t('email')} name="colleague-email" type="email" autoComplete="off" required value={email} onInput={setEmail} error={errors['colleague-email']} />
      <Choices legend={t('pplRoleLegend')} options={roleOptions()} value={role} onChange={setRole} />
      <p class="soft">{t(`roleText_${role}`)}</p>
      <FailureLine failure={failure} />
      <p class="actions"><Button small kind="main" type="submit">{busy ? t('saving') : t('pplInvite')}</Button></p>
    </Form>
  );
}
