import { useEffect, useRef, useState } from 'preact/hooks';
import { Button } from '../../shared/form/Button';
import { Field } from '../../shared/form/Field';
import type { Options, Shown, Way } from '../api/account';
import { PasskeyFailed, passkeysWork, showPasskey } from '../api/passkeys';
import { failureFrom, isProblem, type Failure } from '../api/request';
import { failureWords } from '../parts/failureWords';
import { t } from '../words';

interface Props {
  ways: readonly Way[];
  /** What a passkey is asked to answer. */
  challenge: () => Promise<Options>;
  /** Answers what went wrong, null when all is well. */
  onShow: (shown: Shown) => Promise<Failure | null>;
  button: string;
}

/** Spaces come along when a code is pasted; the server takes it with or without them. */
const isCode = (text: string): boolean => /^\d{6}$/.test(text.replace(/\s/g, ''));

const label = (way: Way): string => t(way === 'code' ? 'secUseCode' : way === 'passkey' ? 'secUsePasskey' : 'secUseRecovery');

/** What was thrown, in words. Faults of this program go on. */
export function passkeyWords(error: unknown): string {
  return error instanceof PasskeyFailed ? t(`passkey_${error.reason}`) : failureWords(failureFrom(error));
}

/** The words for a wrong code speak of the next one and of a clock: a recovery code has neither. */
function factorWords(way: Way, failure: Failure): string {
  const wrong = isProblem(failure, 'wrong-code');
  return wrong && way === 'recovery_code' ? t('secRecoveryWrong') : failureWords(failure);
}

/** Shows a second factor: a code, a passkey, a recovery code, whichever the person has. */
export function ShowFactor({ ways, challenge, onShow, button }: Props) {
  const usable = ways.filter((way) => way !== 'passkey' || passkeysWork());
  const [way, setWay] = useState<Way>(usable[0] ?? 'recovery_code');
  const [text, setText] = useState('');
  const [error, setError] = useState('');
  const [busy, setBusy] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => form.current?.querySelector('input')?.focus(), [way]);
  const show = async (shown: () => Promise<Shown>) => {
    if (busy) return;
    setBusy(true);
    setError('');
    try {
      const failure = await onShow(await shown());
      if (failure) setError(factorWords(way, failure));
    } catch (thrown) {
      setError(passkeyWords(thrown));
    }
    setBusy(false);
    form.current?.querySelector('input')?.focus();
  };
  const submit = (event: Event) => {
    event.preventDefault();
    if (way === 'code' && !isCode(text)) return setError(t('secCodeMissing'));
    if (way === 'recovery_code' && !text.trim()) return setError(t('secRecoveryMissing'));
    return void show(async () => (way === 'passkey' ? { passkey: await showPasskey(await challenge()) } : { [way]: text }));
  };
  const other = (to: Way) => {
    setWay(to);
    setText('');
    setError('');
  };
  return (
    <form ref={form} onSubmit={submit} noValidate>
      {way === 'code' && (
        <Field key="code" label={t('secCode')} hint={t('secCodeHint')} name="one-time-code" inputMode="numeric" autoComplete="one-time-code" required
          value={text} onInput={setText} error={error} />
      )}
      {way === 'recovery_code' && (
        <Field key="recovery" label={t('secRecovery')} hint={t('secRecoveryHint')} name="recovery-code" autoComplete="off" required
          value={text} onInput={setText} error={error} />
      )}
      <div role="alert">{way === 'passkey' && error && <p class="error">{error}</p>}</div>
      <Button kind="main" type="submit">{busy ? t('signingIn') : way === 'passkey' ? label('passkey') : button}</Button>
      <p class="actions">{usable.filter((one) => one !== way).map((one) => <Button key={one} small kind="quiet" onClick={() => other(one)}>{label(one)}</Button>)}</p>
    </form>
  );
}
