import { isReceived, type Event } from '../../../outbox';
import { Button, ButtonLink } from '../../../shared/form/Button';
import { Link } from '../../../shared/router';
import { symptomOf } from '../../care/lock';
import { SYMPTOMS } from '../../care/symptoms';
import { Trouble } from '../../parts/Kept';
import { Notices } from '../../parts/Notices';
import { Screen } from '../../parts/Screen';
import { EmergencyText, UrgentLine } from '../../parts/Urgent';
import { useDraft } from '../../parts/useDraft';
import { cleared, firstName, locks, whenWords } from '../../phone';
import { t } from '../../words';
import { Send } from '../me/OnThisPhone';
import { Slip } from './Slip';
import { DO } from './Stop';

function Sign({ event }: { event: Event }) {
  const symptom = symptomOf(event);
  const practitioner = firstName.value;
  return (
    <section class="block">
      <h2>{t(`symptom_${symptom}`)}</h2>
      <p class="note soft">{t('lockedAt', { time: whenWords(event.recorded_at) })} {t(isReceived(event) ? 'lockedReceived' : 'lockedWaiting', { practitioner })}</p>
      <div class="urgent big">
        <p><b>{t(`urgency_${SYMPTOMS[symptom]}`)}.</b></p>
        <p>{t(DO[SYMPTOMS[symptom]], { practitioner })}</p>
      </div>
      <Slip event={event} />
    </section>
  );
}

/** In the place of every page with stones while a sign stands: how to get help, and what opens training again. */
export function Locked() {
  const practitioner = firstName.value;
  return (
    <Screen
      title={t('lockedTitle')}
      tabs
      foot={<><div class="row steps"><ButtonLink kind="hurt" to="/hurts">{t('itHurts')}</ButtonLink></div><UrgentLine /></>}
    >
      <Notices />
      <p>{t('lockedUntil', { practitioner })}</p>
      {locks.value.map((event) => <Sign key={event.id} event={event} />)}
      <Trouble />
      <EmergencyText />
      <p class="note told-nobody">{t('toldNobody')}</p>
      <div class="block">
        <Send />
        <Link class="tap" to="/stop">{t('allSigns')}</Link>
      </div>
    </Screen>
  );
}

/** Said once after the practice has cleared a sign. */
export function ClearedNews() {
  const [seen, setSeen] = useDraft<{ keys: string[] }>('seen-cleared', { keys: [] });
  const fresh = seen ? cleared.value.filter(({ key }) => !seen.keys.includes(key)) : [];
  if (!seen || fresh.length === 0) return null;
  const signs = [...new Set(fresh.flatMap(({ symptoms }) => symptoms))];
  return (
    <section class="sheet">
      <h2>{t('clearedTitle', { practitioner: firstName.value })}</h2>
      <ul class="cues">{signs.map((sign) => <li key={sign}>{t(`symptom_${sign}`)}</li>)}</ul>
      <p class="note">{t('clearedText')}</p>
      <Button small onClick={() => setSeen({ keys: cleared.value.map(({ key }) => key) })}>{t('newSeen')}</Button>
    </section>
  );
}
