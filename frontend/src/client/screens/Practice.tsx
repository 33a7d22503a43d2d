import { draftKey, events, isReceived, record } from '../../outbox';
import { standing } from '../../outbox/fold';
import { dayAndMonth } from '../../shared/dates';
import { Button } from '../../shared/form/Button';
import { Field } from '../../shared/form/Field';
import { Link } from '../../shared/router';
import { useState } from 'preact/hooks';
import { Trouble } from '../parts/Kept';
import { Screen } from '../parts/Screen';
import { replyTime } from '../parts/practiceWords';
import { EmergencyText } from '../parts/Urgent';
import { useDraft } from '../parts/useDraft';
import { firstName, practiceName, practitioner, versions, whenWords } from '../phone';
import { attempt, put, withdraw } from '../session/actions';
import { t } from '../words';
import { isUnread, news, type News } from './practice/news';

function Message({ one }: { one: News }) {
  const unread = isUnread(one);
  const opened = (event: { currentTarget: HTMLDetailsElement }) => {
    if (event.currentTarget.open && unread && one.id) void put('message_read', { message_id: one.id });
  };
  return (
    <details class="message" onToggle={opened}>
      <summary>{unread && <b>{t('messageNew')}&nbsp;</b>} {t(one.id ? 'messageOpen' : 'answerOpen', { time: whenWords(one.at) })}</summary>
      <p class="letter">{one.text}</p>
      {one.from && <p class="note soft">{one.from}</p>}
    </details>
  );
}

const Messages = () => (
  <section class="block">
    <h2>{t('messagesTitle')}</h2>
    {news.value.length === 0 && <p>{t('messagesNone', { practitioner: firstName.value })}</p>}
    {news.value.map((one) => <Message key={one.key} one={one} />)}
  </section>
);

function Write() {
  const [draft, change] = useDraft<{ text: string }>('line', { text: '' });
  const [state, setState] = useState<'' | 'empty' | 'saved'>('');
  const send = async () => {
    const text = draft?.text.trim() ?? '';
    if (!text) return setState('empty');
    if (await attempt(() => record('note_written', { text }, { [draftKey('line')]: undefined }))) {
      change({ text: '' });
      setState('saved');
    }
  };
  return (
    <section class="block">
      <h2>{t('writeTitle')}</h2>
      {draft && <Field multiline label={t('writeLabel', { practitioner: firstName.value })} hint={t('notEmergency')} value={draft.text} error={state === 'empty' ? t('writeEmpty') : null} onInput={(text) => { setState(''); change({ text }); }} />}
      <div class="stack"><Button wide onClick={() => void send()}>{t('writeSend')}</Button></div>
      <p class="note" role="status">{state === 'saved' && t('writeSaved')}</p>
      <Trouble />
    </section>
  );
}

/** How many of one's own lines are shown. House value. */
const LINES_SHOWN = 5;

function OwnLines() {
  const lines = standing(events.value).filter((event) => event.kind === 'note_written').slice(-LINES_SHOWN).reverse();
  if (lines.length === 0) return null;
  return (
    <section class="block">
      <h2>{t('yourLines')}</h2>
      <ul class="lines">
        {lines.map((event) => (
          <li key={event.id}>
            <span><span class="letter">{String(event.body.text)}</span><small>{whenWords(event.recorded_at)}, {t(isReceived(event) ? 'lineReceived' : 'lineWaiting')}</small></span>
            <Button small kind="quiet" onClick={() => void withdraw(event.id)}>{t('undo')}</Button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Changes() {
  if (versions.value.length === 0) return null;
  return (
    <section class="block">
      <h2>{t('changedTitle')}</h2>
      {versions.value.map((version) => (
        <div key={version.number}>
          <h3 class="sub">{t('versionFrom', { n: version.number, day: dayAndMonth(version.effective_on) })}</h3>
          {version.number === 1 || version.changes.length === 0 ? <p class="note">{t('versionFirst')}</p> : <ul class="cues note">{version.changes.map((change) => <li key={change}>{change}</li>)}</ul>}
        </div>
      ))}
    </section>
  );
}

const WhoToCall = () => (
  <section class="block">
    <h2>{t('callWho')}</h2>
    <EmergencyText />
    <p class="note">{replyTime()} {t('notEmergency')}</p>
    <Link class="tap" to="/stop">{t('signsLink')}</Link>
  </section>
);

export function Practice() {
  return (
    <Screen title={practiceName.value} where={<span>{practitioner.value}</span>} tabs>
      <Messages />
      <WhoToCall />
      <Write />
      <OwnLines />
      <Changes />
    </Screen>
  );
}
