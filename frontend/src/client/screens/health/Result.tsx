import { isReceived, questions, type Event } from '../../../outbox';
import { Button, ButtonLink } from '../../../shared/form/Button';
import { reasonsOf, screen, type Answers, type Outcome } from '../../care/screening';
import { Trouble } from '../../parts/Kept';
import { BackLink, Screen } from '../../parts/Screen';
import { EmergencyText, RedFlags } from '../../parts/Urgent';
import { firstName, whenWords } from '../../phone';
import { withdraw } from '../../session/actions';
import { t } from '../../words';

const MORE = { not_needed: 'healthFineMore', recommended: 'healthRecommended', required: 'healthRequired' } as const satisfies Record<Outcome, string>;

/** What the last answers ask for, in plain words; and the ways to answer again or to take them back. */
export function Result({ event, again }: { event: Event; again: () => void }) {
  const answers = event.body as unknown as Answers;
  const outcome = screen(answers);
  const practitioner = firstName.value;
  const reasons = reasonsOf(answers);
  return (
    <Screen
      title={outcome === 'not_needed' ? t('healthFine') : t('healthWait', { practitioner })}
      where={<BackLink to="/me">{t('me')}</BackLink>}
      foot={<><Trouble /><ButtonLink kind="main" wide to="/">{t('goToToday')}</ButtonLink></>}
    >
      {answers.signs_or_symptoms && <RedFlags />}
      <p>{t(MORE[outcome], { practitioner })}</p>
      {reasons.length > 0 && <ul class="cues">{reasons.map((reason) => <li key={reason}>{t(reason)}</li>)}</ul>}
      <p>{t('healthNot')}</p>
      <p class="note soft" role="status">{t('lockedAt', { time: whenWords(event.recorded_at) })} {t(isReceived(event) ? 'lockedReceived' : 'lockedWaiting', { practitioner })}</p>
      <EmergencyText />
      <div class="stack">
        {questions.value.length > 0 && <Button wide onClick={again}>{t('healthAgain')}</Button>}
        <Button kind="quiet" onClick={() => void withdraw(event.id)}>{t('undo')}</Button>
      </div>
    </Screen>
  );
}
