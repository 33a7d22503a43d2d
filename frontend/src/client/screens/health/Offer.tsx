import { useState } from 'preact/hooks';
import { questions } from '../../../outbox';
import { Button, ButtonLink } from '../../../shared/form/Button';
import { useDraft } from '../../parts/useDraft';
import { progress, screening } from '../../phone';
import { t } from '../../words';

/** Before the very first session: a quiet card that can be put off; under Me the questions stay at hand. */
export function HealthOffer() {
  const [put, setPut] = useDraft<{ off: boolean }>('health-offer', { off: false });
  // Judged when the page opens: a card that went with the first stone would move the others under the finger.
  const [isFirst] = useState(progress.value.size === 0);
  if (!isFirst || !put || put.off || screening.value || questions.value.length === 0) return null;
  return (
    <section class="sheet">
      <h2>{t('healthTitle')}</h2>
      <p class="note">{t('healthOffer')}</p>
      <div class="row">
        <ButtonLink small to="/health">{t('morningAnswer')}</ButtonLink>
        <Button small kind="quiet" onClick={() => setPut({ off: true })}>{t('morningLater')}</Button>
      </div>
    </section>
  );
}

/** Under Me. */
export const HealthUnderMe = () => (
  <section class="block">
    <h2>{t('healthTitle')}</h2>
    <p>{t(screening.value ? 'healthDone' : 'healthOffer')}</p>
    <div class="stack"><ButtonLink wide to="/health">{t(screening.value ? 'healthLook' : 'morningAnswer')}</ButtonLink></div>
  </section>
);
