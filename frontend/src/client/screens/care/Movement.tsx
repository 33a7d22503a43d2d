import { useState } from 'preact/hooks';
import { Choices } from '../../../shared/form/Choices';
import { movementsOf, NO_MOVEMENT } from '../../care/link';
import { nameToday } from '../../parts/names';
import { progressFor } from '../../phone';
import { t } from '../../words';
import { movementOf, type About, type PainDraft } from './report';

interface MovementProps {
  about: About;
  draft: PainDraft;
  tried: boolean;
  change: (part: Partial<PainDraft>) => void;
}

/** Which movement it is about: known from a movement's card and said so, else asked. */
export function Movement({ about, draft, tried, change }: MovementProps) {
  const { planned, card, justDone, from } = about;
  const [asking, setAsking] = useState(card === null);
  const chosen = movementOf(about, draft);
  if (!planned) return null;
  const movements = movementsOf(planned, justDone);
  const known = movements.find((one) => one.key === card);
  if (!asking && known && chosen === card) {
    return (
      <p>
        {t('painAbout')} <b>{nameToday(planned, known, progressFor(planned.planned_id))}</b> <button type="button" class="link tap" onClick={() => setAsking(true)}>{t('painAboutChange')}</button>
      </p>
    );
  }
  const options = movements.map((one) => ({ value: one.key, label: nameToday(planned, one, progressFor(planned.planned_id)) }));
  return (
    <Choices
      legend={t('painWhich')}
      options={[...options, { value: NO_MOVEMENT, label: t('painWhichNone') }]}
      value={chosen}
      error={tried && chosen === null ? t('painWhichMissing') : null}
      onChange={(key) => change({ movement: { from, key } })}
    />
  );
}
