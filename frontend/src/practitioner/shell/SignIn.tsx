import { useEffect, useRef, useState } from 'preact/hooks';
import { Button } from '../../shared/form/Button';
import { Field } from '../../shared/form/Field';
import { MapEdge } from '../../shared/marks/marks';
import { signInChallenge, type Way } from '../api/account';
import { passkeysWork } from '../api/passkeys';
import { signIn, signInWithPasskey } from '../api/session';
import type { Failure } from '../api/request';
import { ErrorSummary, type FieldErrors } from '../parts/ErrorSummary';
import { failureWords } from '../parts/failureWords';
import { t } from '../words';
import { Menu } from './Menu';
import { passkeyWords, ShowFactor } from './ShowFactor';

/** Whose password was right, and what they can show besides. */
interface Known { email: string; password: string; ways: readonly Way[] }

function missing(email: string, password: string): FieldErrors {
  const errors: FieldErrors = {};
  if (!email.trim()) errors.email = t('emailMissing');
  else if (!/^[^@\s]+@[^@\s]+$/.test(email.trim())) errors.email = t('emailOdd');
  if (!password) errors.password = t('passwordMissing');
  return errors;
}

function refusal(failure: Failure): string {
  if (failure.kind !== 'problem') return failureWords(failure);
  if (failure.problem.status === 401) return t('signInWrong');
  if (failure.problem.status === 429) return failure.retryAfterS ? t('signInRate', { n: failure.retryAfterS }) : t('signInRateUnknown');
  return failureWords(failure);
}

function ByPasskey() {
  const [error, setError] = useState('');
  const go = async () => {
    setError('');
    try {
      await signInWithPasskey();
    } catch (thrown) {
      setError(passkeyWords(thrown));
    }
  };
  return (
    <div class="by-passkey">
      <p class="soft">{t('signInOr')}</p>
      <Button onClick={() => void go()}>{t('signInPasskey')}</Button>
      <div role="alert">{error && <p class="error">{error}</p>}</div>
    </div>
  );
}

function Form({ onKnown }: { onKnown: (known: Known) => void }) {
  const [email, setEmail] = useState('');
  const [password, setPassword] = useState('');
  const [shown, setShown] = useState(false);
  const [busy, setBusy] = useState(false);
  const [attempt, setAttempt] = useState(0);
  const [errors, setErrors] = useState<FieldErrors>({});
  const submit = async (event: Event) => {
    event.preventDefault();
    if (busy) return;
    const found = missing(email, password);
    setErrors(found);
    setAttempt(attempt + 1);
    if (Object.keys(found).length > 0) return;
    setBusy(true);
    const failure = await signIn(email.trim(), password);
    setBusy(false);
    if (!failure) return;
    if (failure.kind === 'problem' && failure.problem.ways) return onKnown({ email: email.trim(), password, ways: failure.problem.ways });
    setErrors({ [failure.kind === 'problem' && failure.problem.status === 401 ? 'password' : 'email']: refusal(failure) });
    setAttempt(attempt + 2);
  };
  return (
    <form onSubmit={submit} noValidate>
      <ErrorSummary errors={errors} attempt={attempt} />
      <Field label={t('email')} name="email" type="email" autoComplete="username" required value={email} onInput={setEmail} error={errors.email} />
      <Field label={t('password')} name="password" type={shown ? 'text' : 'password'} autoComplete="current-password" required
        value={password} onInput={setPassword} error={errors.password} hint={t('forgotPassword')} />
      <label class="check"><input type="checkbox" checked={shown} onChange={(event) => setShown(event.currentTarget.checked)} /> {t('showPassword')}</label>
      <Button kind="main" type="submit">{busy ? t('signingIn') : t('signInButton')}</Button>
      <p class="sr" role="status">{busy ? t('signingIn') : ''}</p>
    </form>
  );
}

function Second({ known: { email, password, ways }, onBack }: { known: Known; onBack: () => void }) {
  return (
    <>
      <p role="status">{t('secText')}</p>
      <ShowFactor ways={ways} challenge={() => signInChallenge({ email, password })} onShow={(shown) => signIn(email, password, shown)} button={t('signInButton')} />
      <p class="soft note">{t('secLost')}</p>
      <p><Button small kind="quiet" onClick={onBack}>{t('secBack')}</Button></p>
    </>
  );
}

/** Back at the first step the focus is where one types first. */
function useFocusBack(step: 'first' | 'second') {
  const before = useRef(step);
  useEffect(() => {
    if (before.current === 'second' && step === 'first') document.querySelector<HTMLInputElement>('.sign-in input[name=email]')?.focus();
    before.current = step;
  }, [step]);
}

/** `ended`: the page one was on waits behind this form, as it was. */
export function SignIn({ ended }: { ended: boolean }) {
  const [known, setKnown] = useState<Known | null>(null);
  useFocusBack(known ? 'second' : 'first');
  return (
    <>
      <header class="bar"><b>{t('appName')}</b><span class="spacer" /><Menu /></header>
      <MapEdge />
      <main class="sign-in">
        <h1 id="sign-in-title">{known ? t('secTitle') : ended ? t('signInEndedTitle') : t('signInTitle')}</h1>
        {ended && !known && <p>{t('signInEndedText')}</p>}
        {known ? <Second known={known} onBack={() => setKnown(null)} /> : <Form onKnown={setKnown} />}
        {!known && passkeysWork() && <ByPasskey />}
        <p class="soft note">{t('emergencyNote')}</p>
      </main>
    </>
  );
}
