import { useState } from 'preact/hooks';
import { BodyMap } from '../../../shared/body/BodyMap';
import { placeTitle } from '../../../shared/body/places';
import { Button } from '../../../shared/form/Button';
import { Arrow } from '../../../shared/marks/marks';
import { navigate, query } from '../../../shared/router';
import { sessionPath } from '../../parts/names';
import { BackLink, Screen } from '../../parts/Screen';
import { EmergencyText, RedFlags, UrgentLine } from '../../parts/Urgent';
import { useDraft } from '../../parts/useDraft';
import { t } from '../../words';
import { EMPTY_PAIN, PAIN_DRAFT, type PainDraft } from './report';

/** Where one came from: the session's own page, or today. */
export const cameFrom = (): string => (query.value.get('session') ? sessionPath(query.value.get('session') as string) : '/');

/** First step: the place. Reachable at any moment, with and without a session. */
export function Where() {
  const [draft, change] = useDraft<PainDraft>(PAIN_DRAFT, EMPTY_PAIN);
  const [missing, setMissing] = useState(false);
  const place = draft?.place ?? null;
  const next = () => (place ? navigate(`/hurts/how?${query.value}`) : setMissing(true));
  return (
    <Screen
      title={t('whereTitle')}
      where={<><BackLink to={cameFrom()} /><span>{t('stepOf', { step: 1, all: 2 })}</span></>}
      foot={
        <>
          <p class="trouble" role="alert">{missing && !place && t('whereMissing')}</p>
          <Button kind="main" wide onClick={next}>{place ? t('whereNext', { place: placeTitle(place) }) : t('nextStep')} <Arrow /></Button>
          <UrgentLine />
        </>
      }
    >
      <RedFlags />
      {place?.region === 'chest' && <p class="urgent" role="alert"><b>{t('adviceChest')}</b></p>}
      {draft && <BodyMap value={place} onChange={(to) => change({ place: to })} />}
      <div class="block"><EmergencyText /></div>
    </Screen>
  );
}
