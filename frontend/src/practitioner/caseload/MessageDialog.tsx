import { useState } from 'preact/hooks';
import { Dialog } from '../../shared/Dialog';
import { sendMessage } from '../api/calls';
import { draft, dropDraft } from '../api/drafts';
import { refreshAbout } from '../api/resource';
import { Button } from '../form/Button';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { FailureLine, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';

interface Addressee { id: string; display_name: string }

/** Writes one message; answers what the form needs. The words are kept until they are sent, also when the dialog is closed. */
export function useMessage(client: Addressee, onSent: () => void) {
  const name = `message.${client.id}`;
  const text = draft(name);
  const [missing, setMissing] = useState(false);
  const { busy, failure, run } = useWrite();
  const send = async () => {
    const words = text.value.trim();
    setMissing(!words);
    if (!words) return;
    if (!(await run(() => sendMessage(client.id, words)))) return;
    text.value = '';
    dropDraft(name);
    say(t('messageSent', { name: client.display_name }));
    void refreshAbout(client.id);
    onSent();
  };
  return { text, missing, busy, failure, send };
}

export function MessageFields({ message }: { message: ReturnType<typeof useMessage> }) {
  return (
    <>
      <Field label={t('messageLabel')} hint={t('messageHint')} multiline name="message" value={message.text.value}
        onInput={(words) => (message.text.value = words)} error={message.missing ? t('messageMissing') : null} />
      <FailureLine failure={message.failure} />
    </>
  );
}

function Body({ client, onClose }: { client: Addressee; onClose: () => void }) {
  const message = useMessage(client, onClose);
  return (
    <Form onSubmit={(event) => { event.preventDefault(); void message.send(); }}>
      <MessageFields message={message} />
      <div class="foot">
        <Button kind="main" small type="submit">{message.busy ? t('messageSending') : t('messageSend')}</Button>
        <Button small onClick={onClose}>{t('cancel')}</Button>
      </div>
    </Form>
  );
}

export function MessageDialog({ client, onClose }: { client: Addressee | null; onClose: () => void }) {
  return (
    <Dialog open={client !== null} title={client ? t('messageTitle', { name: client.display_name }) : ''} onClose={onClose}>
      {client && <Body client={client} onClose={onClose} />}
    </Dialog>
  );
}
