import { useState } from 'preact/hooks';
import { events, record, type Event } from '../../../outbox';
import { standing } from '../../../outbox/fold';
import { Button } from '../../../shared/form/Button';
import { Field } from '../../../shared/form/Field';
import { Arrow } from '../../../shared/marks/marks';
import { Link } from '../../../shared/router';
import { isSymptom, SYMPTOMS, symptomsOf, URGENCIES, type Symptom } from '../../care/symptoms';
import { Trouble } from '../../parts/Kept';
import { BackLink, Screen } from '../../parts/Screen';
import { EmergencyText } from '../../parts/Urgent';
import { firstName } from '../../phone';
import { attempt } from '../../session/actions';
import { endRest, rest } from '../../session/rest';
import { t } from '../../words';
import { NotFound } from '../NotFound';
import { Slip } from './Slip';

/** Every sign to stop for, by how soon help is needed. Always at hand, also offline. */
export function StopList() {
  return (
    <Screen title={t('stopTitle')} where={<BackLink to="/">{t('today')}</BackLink>}>
      <p class="urgent"><b>{t('redFlags')}</b> {t('redFlagsDo')}</p>
      <p>{t('stopText')}</p>
      <EmergencyText />
      {URGENCIES.map((urgency) => (
        <section class="block" key={urgency}>
          <h2>{t(`urgency_${urgency}`)}</h2>
          <ul class="signs">
            {symptomsOf(urgency).map((symptom) => (
              <li key={symptom}><Link to={`/stop/${symptom}`}><span>{t(`symptom_${symptom}`)}</span><Arrow /></Link></li>
            ))}
          </ul>
        </section>
      ))}
    </Screen>
  );
}

export const DO = { now: 'doNow', same_day: 'doSameDay', ask: 'doAsk' } as const;

/** One sign: what to do first, then one tap to tell the practice. */
export function StopSign({ params }: { params: Record<string, string> }) {
  const symptom = params.symptom ?? '';
  return isSymptom(symptom) ? <Sign symptom={symptom} /> : <NotFound />;
}

function Sign({ symptom }: { symptom: Symptom }) {
  const [note, setNote] = useState('');
  const [told, setTold] = useState<Event | null>(null);
  const stands = told !== null && standing(events.value).some((event) => event.id === told.id);
  const practitioner = firstName.value;
  const tell = () =>
    attempt(async () => {
      const stored = await record('symptom_reported', { symptom, ...(note.trim() && { note: note.trim() }) });
      setTold(stored);
      if (rest.value) endRest(); // nothing of the session may ring any more
    });
  return (
    <Screen title={t(`symptom_${symptom}`)} where={<BackLink to="/stop">{t('stopTitle')}</BackLink>}>
      <div class="urgent big">
        <p><b>{t(`urgency_${SYMPTOMS[symptom]}`)}.</b></p>
        <p>{t(DO[SYMPTOMS[symptom]], { practitioner })}</p>
      </div>
      <EmergencyText />
      {!stands && <div class="stack">
        {symptom === 'other' && <Field multiline label={t('alsoWhat')} value={note} onInput={setNote} />}
        <Button wide onClick={() => void tell()}>{t('tellPractice')}</Button>
      </div>}
      <Trouble />
      <p role="status">{stands ? `${t('told', { practitioner })} ${t('lockedUntil', { practitioner })}` : told !== null && t('takenBack')}</p>
      {stands && <Slip event={told} />}
      <p class="note told-nobody">{t('toldNobody')}</p>
    </Screen>
  );
}
