import { useState } from 'preact/hooks';
import type { PainWhen } from '../../../outbox/events';
import { placeTitle, type Place } from '../../../shared/body/places';
import { Button } from '../../../shared/form/Button';
import { Choices, Several } from '../../../shared/form/Choices';
import { Eleven } from '../../../shared/form/Eleven';
import { Tick } from '../../../shared/marks/marks';
import { navigate, query } from '../../../shared/router';
import { Trouble } from '../../parts/Kept';
import { toFirstError } from '../../parts/firstError';
import { replyTime } from '../../parts/practiceWords';
import { BackLink, Screen } from '../../parts/Screen';
import { RedFlags, UrgentLine } from '../../parts/Urgent';
import { useDraft } from '../../parts/useDraft';
import { firstName, progressFor, thresholds } from '../../phone';
import { laidCount } from '../../session/progress';
import { t } from '../../words';
import { Movement } from './Movement';
import { aboutFrom, asksMovement, EMPTY_PAIN, FEELS, MORNING_DRAFT, movementOf, PAIN_DRAFT, placeOf, savePain, WHENS, type About, type PainDraft } from './report';

export const painEnds = () => ({ 0: t('pain0'), 5: t('pain5'), 10: t('pain10') });

/** While a session runs, pain is most likely felt while moving. */
function firstWhen({ planned, morning }: About): PainWhen | null {
  if (morning) return 'next_morning';
  return planned && laidCount(planned.session, progressFor(planned.planned_id)) > 0 ? 'during' : null;
}

interface QuestionsProps {
  about: About;
  draft: PainDraft;
  when: PainWhen | null;
  tried: boolean;
  change: (part: Partial<PainDraft>) => void;
}

function Questions({ about, draft, when, tried, change }: QuestionsProps) {
  return (
    <form class="questions" onSubmit={(event) => event.preventDefault()}>
      <Eleven legend={t('painLegend')} hideLegend ends={painEnds()} value={draft.rating} error={tried && draft.rating === null ? t('painMissing') : null} onChange={(rating) => change({ rating })} />
      {asksMovement(about) && <Movement about={about} draft={draft} tried={tried} change={change} />}
      {!about.morning && (
        <Choices legend={t('whenTitle')} options={WHENS.map((value) => ({ value, label: t(`when_${value}`) }))} value={when} error={tried && !when ? t('whenMissing') : null} onChange={(to) => change({ when: to })} />
      )}
      <div>
        <Several legend={t('feelsTitle')} options={FEELS.map((value) => ({ value, label: t(`feel_${value}`) }))} value={draft.feels} onChange={(feels) => change({ feels })} />
        <p class="note soft">{t('feelsHint')}</p>
      </div>
    </form>
  );
}

const Promise = () => (
  <>
    <p class="note stop-hint"><b>{t('painStopHint', { stop: thresholds.value.pain_stop })}</b></p>
    <p class="note">{t('answersWhen', { practitioner: firstName.value, reply: replyTime() })}</p>
  </>
);

/** Second step: how strong, when, what it felt like. Also the question of the morning after, whose place is known. */
export function How() {
  const [about] = useState(() => aboutFrom(query.value));
  const [draft, change] = useDraft<PainDraft>(about.morning ? MORNING_DRAFT : PAIN_DRAFT, EMPTY_PAIN);
  const [tried, setTried] = useState(false);
  const place: Place | null = about.morning ? placeOf(about.morning) : (draft?.place ?? null);
  const when = draft?.when ?? firstWhen(about);
  const where = about.morning ? '/' : `/hurts?${query.value}`;
  const save = async () => {
    setTried(true);
    if (!draft || !place || !when || draft.rating === null) return toFirstError();
    if (asksMovement(about) && movementOf(about, draft) === null) return toFirstError();
    const stored = await savePain({ ...draft, place, when, rating: draft.rating }, about);
    if (stored) navigate(`/hurts/advice/${stored.id}`, { replace: true });
  };
  return (
    <Screen
      title={t(about.morning ? 'morningStrong' : 'strongTitle')}
      where={<><BackLink to={where}>{place ? placeTitle(place) : t('back')}</BackLink>{!about.morning && <span>{t('stepOf', { step: 2, all: 2 })}</span>}</>}
      foot={<><Trouble /><Button kind="main" wide onClick={() => void save()}>{t('savePain')} <Tick /></Button><UrgentLine /></>}
    >
      {draft && !place && <p role="alert">{t('whereMissing')}</p>}
      {draft && <Questions about={about} draft={draft} when={when} tried={tried} change={change} />}
      <Promise />
      <RedFlags />
    </Screen>
  );
}
