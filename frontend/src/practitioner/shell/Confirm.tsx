import { useState } from 'preact/hooks';
import { Dialog } from '../../shared/Dialog';
import { Button } from '../../shared/form/Button';
import { Field } from '../../shared/form/Field';
import { confirmChallenge, confirmSession, type Shown, type Way } from '../api/account';
import { asking } from '../api/confirm';
import { passkeysWork, showPasskey } from '../api/passkeys';
import { failureFrom, type Failure } from '../api/request';
import { me } from '../api/session';
import { failureWords } from '../parts/failureWords';
import { t } from '../words';
import { passkeyWords, ShowFactor } from './ShowFactor';

async function tried(shown: Shown & { password?: string }): Promise<Failure | null> {
  try {
    await confirmSession(shown);
    return null;
  } catch (error) {
    return failureFrom(error);
  }
}

function Password({ onDone, onWays }: { onDone: () => void; onWays: (password: string, ways: readonly Way[]) => void }) {
  const [password, setPassword] = useState('');
  const [error, setError] = useState('');
  const [busy, setBusy] = useState(false);
  const submit = async (event: Event) => {
    event.preventDefault();
    if (!password) return setError(t('passwordMissing'));
    if (busy) return;
    setBusy(true);
    const failure = await tried({ password });
    setBusy(false);
    if (!failure) return onDone();
    if (failure.kind === 'problem' && failure.problem.ways) return onWays(password, failure.problem.ways);
    setError(failureWords(failure));
  };
  const byPasskey = async () => {
    setError('');
    try {
      await confirmSession({ passkey: await showPasskey(await confirmChallenge()) });
      onDone();
    } catch (thrown) {
      setError(passkeyWords(thrown));
    }
  };
  return (
    <form onSubmit={submit} noValidate>
      <input type="hidden" name="username" autoComplete="username" value={me.value?.practitioner.email} />
      <Field label={t('password')} name="confirm-password" type="password" autoComplete="current-password" required value={password} onInput={setPassword} error={error} />
      <p class="actions">
        <Button small kind="main" type="submit">{t('conConfirm')}</Button>
        {passkeysWork() && <Button small onClick={() => void byPasskey()}>{t('conPasskey')}</Button>}
      </p>
    </form>
  );
}

/** The dialog that asks again who it is, over whatever page wanted to know. */
export function Confirm() {
  const waiting = asking.value;
  const [first, setFirst] = useState<{ password: string; ways: readonly Way[] } | null>(null);
  const end = (confirmed: boolean) => {
    setFirst(null);
    asking.peek()?.answer(confirmed);
  };
  const show = async (shown: Shown) => {
    const failure = await tried({ password: first?.password ?? '', ...shown });
    if (!failure) end(true);
    return failure;
  };
  return (
    <Dialog open={waiting !== null} title={t('conTitle')} onClose={() => end(false)}>
      <div class="confirm">
        <p>{first ? t('secText') : t('conText')}</p>
        {first
          ? <ShowFactor ways={first.ways} challenge={confirmChallenge} onShow={show} button={t('conConfirm')} />
          : <Password onDone={() => end(true)} onWays={(password, ways) => setFirst({ password, ways })} />}
      </div>
      <div class="foot"><Button small onClick={() => end(false)}>{t('cancel')}</Button></div>
    </Dialog>
  );
}
