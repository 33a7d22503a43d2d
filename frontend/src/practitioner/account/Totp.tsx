import { useEffect, useRef, useState } from 'preact/hooks';
import { dayShort, today } from '../../shared/dates';
import { activateTotp, beginTotp, removeTotp, type Account } from '../api/account';
import { confirmed } from '../api/confirm';
import { isProblem, type Failure } from '../api/request';
import { Button } from '../form/Button';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { failureWords } from '../parts/failureWords';
import { FailureLine, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';
import { Ask } from './Ask';

type Begun = Awaited<ReturnType<typeof beginTotp>>;
/** In fours, as one reads a long key out; apps take it with the spaces. */
const grouped = (secret: string): string => secret.replace(/(.{4})(?=.)/g, '$1 ');

/** While an app is set up, a wrong code is most often one of a picture scanned before. */
const wrongWords = (failure: Failure): string =>
  isProblem(failure, 'wrong-code') ? t('totpWrong') : failureWords(failure);

function SetUp({ begun, again, onOn, onClose }: { begun: Begun; again: boolean; onOn: (codes: string[]) => void; onClose: () => void }) {
  const [code, setCode] = useState('');
  const [missing, setMissing] = useState('');
  const { busy, failure, run } = useWrite();
  const heading = useRef<HTMLParagraphElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const submit = async (event: Event) => {
    event.preventDefault();
    setMissing(/^\s*(\d\s*){6}$/.test(code) ? '' : t('secCodeMissing'));
    if (!/^\s*(\d\s*){6}$/.test(code)) return;
    const codes = await run(() => activateTotp(code));
    if (codes) onOn(codes);
  };
  return (
    <Form onSubmit={submit} noValidate>
      <p tabIndex={-1} ref={heading}>{t('totpScan')} {again && t('totpOldStays')}</p>
      <img class="qr" alt={t('totpQr')} src={`data:image/svg+xml,${encodeURIComponent(begun.qr_svg)}`} />
      <p class="secret">{t('totpSecret', { secret: grouped(begun.secret) })}</p>
      <Field label={t('totpFirst')} name="one-time-code" inputMode="numeric" autoComplete="one-time-code" required value={code} onInput={setCode}
        error={missing || (failure && wrongWords(failure))} />
      <p class="actions"><Button kind="main" small type="submit">{busy ? t('saving') : t('totpActivate')}</Button> <Button small kind="quiet" onClick={onClose}>{t('cancel')}</Button></p>
    </Form>
  );
}

/** The app for codes: set up, set up anew, turned off. `onChanged` with recovery codes, where these are the first. */
export function Totp({ account, onChanged }: { account: Account; onChanged: (codes: string[]) => void }) {
  const [begun, setBegun] = useState<Begun | null>(null);
  const [leaving, setLeaving] = useState(false);
  const { failure, run } = useWrite();
  const since = account.totp_since;
  const begin = async () => {
    const found = await run(() => confirmed(beginTotp));
    if (found) setBegun(found);
  };
  const on = (codes: string[]) => {
    setBegun(null);
    say(t('totpDone'));
    onChanged(codes);
  };
  const off = () => {
    say(t('totpRemoved'));
    onChanged([]);
  };
  return (
    <>
      <h3>{t('totpTitle')}</h3>
      <p class="soft">{t('totpText')}</p>
      <p>{since ? t('totpOn', { date: dayShort(today(new Date(since))) }) : t('totpOff')}</p>
      {begun
        ? <SetUp begun={begun} again={since !== null} onOn={on} onClose={() => setBegun(null)} />
        : (
          <p class="actions">
            <Button small kind={since ? 'other' : 'main'} onClick={() => void begin()}>{since ? t('totpReplace') : t('totpSetUp')}</Button>
            {since && <Button small onClick={() => setLeaving(true)}>{t('totpRemove')}</Button>}
          </p>
        )}
      <FailureLine failure={failure} />
      <Ask open={leaving} title={t('totpRemoveTitle')} button={t('totpRemove')} onClose={() => setLeaving(false)} write={removeTotp} onDone={off}>{t('totpRemoveText')}</Ask>
    </>
  );
}
