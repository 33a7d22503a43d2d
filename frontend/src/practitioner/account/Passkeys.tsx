import { useState } from 'preact/hooks';
import { dayShort, today } from '../../shared/dates';
import { addPasskey, beginPasskey, removePasskey, type Account, type Passkey } from '../api/account';
import { confirmed } from '../api/confirm';
import { makePasskey, passkeysWork } from '../api/passkeys';
import { me } from '../api/session';
import { Button } from '../form/Button';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { moment } from '../parts/heard';
import { say } from '../parts/status';
import { passkeyWords } from '../shell/ShowFactor';
import { t } from '../words';
import { Ask } from './Ask';

function One({ passkey, onRemove }: { passkey: Passkey; onRemove: () => void }) {
  const zone = me.value?.practice.time_zone ?? 'UTC';
  const used = passkey.last_used_at ? t('pskUsed', { time: moment(passkey.last_used_at, zone) }) : t('pskUnused');
  return (
    <li>
      <b>{passkey.name}</b>
      <span class="soft">{t('pskAdded', { date: dayShort(today(new Date(passkey.created_at), zone)) })} · {used}</span>
      <Button small aria-label={t('pskRemoveNamed', { name: passkey.name })} onClick={onRemove}>{t('pskRemove')}</Button>
    </li>
  );
}

function Add({ onAdded }: { onAdded: (codes: string[], name: string) => void }) {
  const [name, setName] = useState('');
  const [error, setError] = useState('');
  const [busy, setBusy] = useState(false);
  const submit = async (event: Event) => {
    event.preventDefault();
    if (!name.trim()) return setError(t('pskNameMissing'));
    if (busy) return;
    setBusy(true);
    setError('');
    try {
      const made = await makePasskey(await confirmed(beginPasskey));
      onAdded(await addPasskey(name, made), name.trim());
      setName('');
    } catch (thrown) {
      setError(passkeyWords(thrown));
    }
    setBusy(false);
  };
  return (
    <Form onSubmit={submit} noValidate>
      <Field label={t('pskName')} hint={t('pskNameHint')} name="passkey-name" autoComplete="off" value={name} onInput={setName} error={error} />
      <p class="actions"><Button small type="submit">{busy ? t('saving') : t('pskAdd')}</Button></p>
    </Form>
  );
}

/** Passkeys: added, told, removed. `onChanged` with recovery codes, where these are the first. */
export function Passkeys({ account, onChanged }: { account: Account; onChanged: (codes: string[]) => void }) {
  const [leaving, setLeaving] = useState<Passkey | null>(null);
  const name = leaving?.name ?? '';
  const added = (codes: string[], called: string) => {
    say(t('pskDone', { name: called }));
    onChanged(codes);
  };
  const removed = () => {
    say(t('pskRemoved', { name }));
    onChanged([]);
  };
  return (
    <>
      <h3>{t('pskTitle')}</h3>
      <p class="soft">{t('pskText')}</p>
      {account.passkeys.length === 0 ? <p>{t('pskNone')}</p> : <ul class="people">{account.passkeys.map((one) => <One key={one.id} passkey={one} onRemove={() => setLeaving(one)} />)}</ul>}
      {!account.passkeys_possible ? <p>{t('pskNotHere')}</p> : !passkeysWork() ? <p>{t('pskNotBrowser')}</p> : <Add onAdded={added} />}
      <Ask open={leaving !== null} title={t('pskRemoveTitle')} button={t('pskRemove')} onClose={() => setLeaving(null)}
        write={() => removePasskey(leaving?.id ?? '')} onDone={removed}>{t('pskRemoveText', { name })}</Ask>
    </>
  );
}
