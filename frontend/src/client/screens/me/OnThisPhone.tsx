import { useState } from 'preact/hooks';
import { askToPersist, clocks, connection, events, exportText, persisted, receivedCount, refused, savedCount, sendNow, waitingSince } from '../../../outbox';
import { Button } from '../../../shared/form/Button';
import { localeTag } from '../../../shared/words/mechanism';
import { Notices } from '../../parts/Notices';
import { day, firstName, lastContact, practiceName, whenWords } from '../../phone';
import { keptDrawings } from '../../session/kept';
import { t } from '../../words';
import { StorageWords } from '../pair/parts';

/** Sends and fetches at once, and says how it went. */
export function Send() {
  const [state, setState] = useState<'' | 'sending' | 'sent' | 'not_sent'>('');
  const send = async () => {
    setState('sending');
    await sendNow();
    setState(connection.value === 'ready' && waitingSince.value === null ? 'sent' : 'not_sent');
  };
  return (
    <>
      <Button small onClick={() => void send()}>{t('sendNow')}</Button>
      <p class="note" role="status">
        {state === 'sending' && t('sending')}
        {state === 'sent' && t('sentAll')}
        {state === 'not_sent' && t('notSentYet')}
      </p>
    </>
  );
}

const KINDS: Partial<Record<string, 'kind_set' | 'kind_finish' | 'kind_walk' | 'kind_pain' | 'kind_symptom' | 'kind_note' | 'kind_health'>> = {
  set_ticked: 'kind_set', set_unticked: 'kind_set', set_left_out: 'kind_set', session_finished: 'kind_finish', walk_logged: 'kind_walk',
  pain_reported: 'kind_pain', symptom_reported: 'kind_symptom', note_written: 'kind_note', screening_answered: 'kind_health',
};

/** Received, not understood, kept: told, and nothing to do. */
function Refused() {
  if (refused.value.length === 0) return null;
  return (
    <details>
      <summary>{t('refusedTitle', { n: refused.value.length })}</summary>
      <p class="note">{t('refusedText')}</p>
      <ul class="cues note">
        {refused.value.map((item) => {
          const event = events.value.find((one) => one.id === item.id);
          return <li key={item.id}>{t('refusedOne', { kind: t(KINDS[event?.kind ?? ''] ?? 'kind_other'), time: event ? whenWords(event.recorded_at) : '' })}</li>;
        })}
      </ul>
    </details>
  );
}

/** Hands the person a file; nothing leaves the phone by itself. */
async function download(): Promise<void> {
  const address = URL.createObjectURL(new Blob([await exportText()], { type: 'application/json' }));
  const link = Object.assign(document.createElement('a'), { href: address, download: `steadfoot-${day.value}.json` });
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

function Export() {
  const [failed, setFailed] = useState(false);
  const save = () => download().then(() => setFailed(false), () => setFailed(true));
  return (
    <div class="block">
      <Button small onClick={() => void save()}>{t('exportButton')}</Button>
      <p class="note soft">{t('exportText')}</p>
      <p class="trouble" role="alert">{failed && t('exportFailed')}</p>
    </div>
  );
}

const megabytes = (bytes: number): string =>
  new Intl.NumberFormat(localeTag(), { minimumFractionDigits: 1, maximumFractionDigits: 1 }).format(bytes / 1e6);

/** How many drawings the cards have without a network. */
function Drawings() {
  const kept = keptDrawings.value;
  const more = kept?.of ? Math.max(0, kept.of - kept.count) : null;
  return (
    <div class="block">
      <h2>{t('drawingsTitle')}</h2>
      <p class="note" role="status">
        {kept?.count ? t('drawingsKept', { n: kept.count, size: megabytes(kept.bytes) }) : t('drawingsNone')}{' '}
        {more === 0 && t('drawingsAll')}{more ? t('drawingsMore', { n: more }) : null}
      </p>
    </div>
  );
}

const onClock = (at: string): string => new Date(at).toLocaleString(localeTag(), { dateStyle: 'short', timeStyle: 'short' });

/** What is saved here, what has arrived, and how safely it is kept. */
export function OnThisPhone() {
  const all = savedCount.value === receivedCount.value;
  return (
    <section>
      <p>{t('paired', { practitioner: firstName.value, practice: practiceName.value })}</p>
      <Notices />
      <div class="block">
        <h2>{t('onThisPhone')}</h2>
        <p role="status">
          {t('entriesSaved', { n: savedCount.value })} {savedCount.value > 0 && (all ? t('allReceived') : t('entriesReceived', { n: receivedCount.value }))}
        </p>
        <p>{lastContact.value ? t('lastContact', { time: lastContact.value }) : t('noContact')}</p>
        {clocks.value && <p class="urgent">{t('clockOff', { phone: onClock(clocks.value.phone), practice: onClock(clocks.value.practice) })}</p>}
        <Send />
        <Refused />
      </div>
      <div class="block">
        <h2>{t('storageTitle')}</h2>
        <StorageWords />
        {persisted.value !== true && <Button small onClick={() => void askToPersist()}>{t('storageAsk')}</Button>}
      </div>
      <Drawings />
      <Export />
    </section>
  );
}
