import { dayShort } from '../../shared/dates';
import type { Message, Overview } from '../api/types';
import { Button } from '../form/Button';
import { Form } from '../form/Form';
import { MessageFields, useMessage } from '../caseload/MessageDialog';
import { moment } from '../parts/heard';
import { t } from '../words';

const One = ({ message, zone }: { message: Message; zone: string }) => (
  <li>
    <p>{message.text}</p>
    <p class="note soft">
      {t('messageFrom', { from: message.from, time: moment(message.sent_at, zone) })}; {message.read_at ? t('messageRead', { time: moment(message.read_at, zone) }) : t('messageUnread')}
    </p>
  </li>
);

/** What the practice wrote, and a place to write. */
export function Messages({ overview }: { overview: Overview }) {
  const { client, messages } = overview;
  const writing = useMessage(client, () => undefined);
  return (
    <section aria-labelledby="messages">
      <h2 id="messages">{t('messagesTitle')}</h2>
      {messages.length === 0 ? <p class="soft">{t('messagesNone')}</p> : <ul class="words">{messages.map((message) => <One key={message.id} message={message} zone={client.time_zone} />)}</ul>}
      <Form class="screen-only" onSubmit={(event) => { event.preventDefault(); void writing.send(); }}>
        <MessageFields message={writing} />
        <Button small type="submit">{writing.busy ? t('messageSending') : t('messageSend')}</Button>
      </Form>
    </section>
  );
}

export function Notes({ overview }: { overview: Overview }) {
  return (
    <section aria-labelledby="notes">
      <h2 id="notes">{t('notesTitle')}</h2>
      {overview.notes.length === 0 && <p class="soft">{t('notesNone')}</p>}
      <ul class="words">
        {overview.notes.map(({ event_id, day, text }) => <li key={event_id}><p><span class="soft">{dayShort(day)}:</span> {text}</p></li>)}
      </ul>
    </section>
  );
}
