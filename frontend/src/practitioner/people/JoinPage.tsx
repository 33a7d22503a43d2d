import { useEffect, useState } from 'preact/hooks';
import { Button } from '../../shared/form/Button';
import { Field } from '../../shared/form/Field';
import { MapEdge } from '../../shared/marks/marks';
import { joinPractice, readWelcome, type Welcome } from '../api/account';
import { failureFrom, type Failure } from '../api/request';
import { take } from '../api/session';
import { ErrorSummary, type FieldErrors } from '../parts/ErrorSummary';
import { FailureLine } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { Menu } from '../shell/Menu';
import { t } from '../words';
import { leaveJoining } from './join';

function Form({ code, welcome }: { code: string; welcome: Welcome }) {
  const back = welcome.returning; // they keep their name
  const [name, setName] = useState(welcome.display_name);
  const [password, setPassword] = useState('');
  const [shown, setShown] = useState(false);
  const [errors, setErrors] = useState<FieldErrors>({});
  const [attempt, setAttempt] = useState(0);
  const { busy, failure, run } = useWrite();
  const submit = async (event: Event) => {
    event.preventDefault();
    const found: FieldErrors = {};
    if (!name.trim()) found.name = t('pplNameMissing');
    if ([...password].length < 12) found['new-password'] = t('problemPasswordLength');
    setErrors(found);
    setAttempt(attempt + 1);
    if (Object.keys(found).length > 0) return;
    const person = await run(() => joinPractice({ code, display_name: name, password }));
    if (!person) return;
    take(person);
    leaveJoining();
  };
  return (
    <form onSubmit={submit} noValidate>
      {back && <p>{t('joinBackText')}</p>}
      <p>{t('joinText', { email: welcome.email, role: t(`role_${welcome.role}`) })} {t(`roleText_${welcome.role}`)}</p>
      <ErrorSummary errors={errors} attempt={attempt} />
      <input type="hidden" name="username" autoComplete="username" value={welcome.email} />
      {!back && <Field label={t('joinName')} hint={t('pplNameHint')} name="name" autoComplete="name" required value={name} onInput={setName} error={errors.name} />}
      <Field label={t('password')} hint={t('pwNewHint')} name="new-password" type={shown ? 'text' : 'password'} autoComplete="new-password" required
        value={password} onInput={setPassword} error={errors['new-password']} />
      <label class="check"><input type="checkbox" checked={shown} onChange={(event) => setShown(event.currentTarget.checked)} /> {t('showPassword')}</label>
      <FailureLine failure={failure} />
      <Button kind="main" type="submit">{busy ? t('saving') : t(back ? 'joinBackButton' : 'joinButton')}</Button>
    </form>
  );
}

/** Where a colleague's link leads: whose practice it is, then a name and a password of one's own. */
export function JoinPage({ code }: { code: string }) {
  const [welcome, setWelcome] = useState<Welcome | null>(null);
  const [failure, setFailure] = useState<Failure | null>(null);
  const ask = async () => {
    setFailure(null);
    try {
      setWelcome(await readWelcome(code));
    } catch (error) {
      setFailure(failureFrom(error));
    }
  };
  useEffect(() => void ask(), [code]);
  return (
    <>
      <header class="bar"><b>{t('appName')}</b><span class="spacer" /><Menu /></header>
      <MapEdge />
      <main class="sign-in">
        <h1>{welcome ? t(welcome.returning ? 'joinBackTitle' : 'joinTitle', { practice: welcome.practice_name }) : t('appName')}</h1>
        {!welcome && !failure && <p role="status">{t('loading')}</p>}
        <FailureLine failure={failure}>{failure?.kind === 'network' && <Button small onClick={() => void ask()}>{t('tryAgain')}</Button>}</FailureLine>
        {welcome && <Form code={code} welcome={welcome} />}
        <p><Button small kind="quiet" onClick={leaveJoining}>{t('joinLeave')}</Button></p>
      </main>
    </>
  );
}
