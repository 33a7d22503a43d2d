import { KeptLine } from '../../shared/KeptLine';
import { receivedCount, refused, savedCount } from '../../outbox';
import { firstName, keptSets, lastContact, practiceName, silentDays } from '../phone';
import { trouble } from '../session/actions';
import { t } from '../words';

/** What is saved and what has arrived, of one session's stones or of the running week's. */
export function Kept({ planned_id = null }: { planned_id?: string | null }) {
  return (
    <>
      <KeptLine
        {...keptSets(planned_id)}
        lastReceived={lastContact.value}
        practice={practiceName.value}
        practitioner={firstName.value}
        refused={refused.value.length}
        full={trouble.value === 'full'}
        silentDays={silentDays.value}
      />
      <p class="trouble" role="alert">{trouble.value === 'not_saved' && t('stoneNotSaved')}</p>
    </>
  );
}

/** The same for pages that are not about stones. */
export function KeptEntries() {
  const all = receivedCount.value === savedCount.value;
  return (
    <p class="note soft" role="status">
      {t('entriesSaved', { n: savedCount.value })} {all ? t('allReceived') : t('entriesReceived', { n: receivedCount.value })}
    </p>
  );
}

/** Said beside the button that tried to save something. */
export function Trouble() {
  return (
    <p class="trouble" role="alert">
      {trouble.value === 'full' && t('phoneFull')}
      {trouble.value === 'not_saved' && t('notSaved')}
    </p>
  );
}
