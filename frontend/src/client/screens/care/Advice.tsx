import { useState } from 'preact/hooks';
import { events, type Event } from '../../../outbox';
import { standing } from '../../../outbox/fold';
import { placeWords } from '../../../shared/body/places';
import { Button, ButtonLink } from '../../../shared/form/Button';
import { adviseDose, asksFirst, hasSettled, zoneOf, type Zone } from '../../care/advice';
import { Trouble } from '../../parts/Kept';
import { sessionPath } from '../../parts/names';
import { replyTime } from '../../parts/practiceWords';
import { Screen } from '../../parts/Screen';
import { EmergencyText, RedFlags } from '../../parts/Urgent';
import { findPlanned, firstName, locks, progressFor, thresholds } from '../../phone';
import { leaveOutMovement, swap, withdraw } from '../../session/actions';
import { findExercise, rungsAround } from '../../session/library';
import { painBefore, painOf } from '../../session/log';
import type { Planned } from '../../session/plan';
import { setsOf } from '../../session/progress';
import { t } from '../../words';
import { NotFound } from '../NotFound';
import { placeOf } from './report';

const WORDS = {
  high: ['adviceStop', 'adviceStopMore'], acceptable: ['adviceWatch', 'adviceWatchMore'], safe: ['adviceFine', 'adviceFineMore'],
} as const satisfies Record<Zone, readonly [string, string]>;

const DOSE = { progress_allowed: 'morningFine', hold: 'morningHold', regress: 'morningTooMuch' } as const;

/** In the morning the question is whether it has settled to what is usual for this person; then, how much it was the day before. */
function morningWord(event: Event) {
  const { rating } = painOf(event);
  if (!hasSettled(rating, thresholds.value)) return 'morningNot';
  return DOSE[adviseDose(painBefore(events.value, event), rating, thresholds.value)];
}

function Words({ event }: { event: Event }) {
  const { rating, when } = painOf(event);
  const feels = (event.body.feels as string[] | undefined) ?? [];
  const practitioner = firstName.value;
  const zone = zoneOf(rating, thresholds.value);
  const [first, more] = WORDS[zone];
  return (
    <div class="advice" role={zone === 'high' ? 'alert' : undefined}>
      {event.body.region === 'chest' && <p class="urgent"><b>{t('adviceChest')}</b></p>}
      {when === 'next_morning' && zone !== 'high' ? (
        <p class="lead">{t(morningWord(event), { practitioner })}</p>
      ) : (
        <><p class="lead">{t(zone === 'high' && !event.body.prescription ? 'adviceStopAny' : first)}</p><p>{t(more)}</p></>
      )}
      {asksFirst(feels) && <p><b>{t('adviceAsk', { practitioner })}</b></p>}
    </div>
  );
}

/** What one can do at once: the easier way, or the movement left out for today. */
function Steps({ planned, prescription }: { planned: Planned; prescription: string }) {
  const [left, setLeft] = useState<number | null>(null);
  const found = setsOf(planned.session).find((set) => set.prescription.key === prescription)?.prescription;
  if (!found) return null;
  const now = progressFor(planned.planned_id).swaps[prescription] ?? found.variant;
  const { easier } = rungsAround(findExercise(planned.version.exercises, found.exercise), now);
  return (
    <div class="stack">
      {easier && <Button wide onClick={() => void swap(planned, prescription, now, easier.variant)}>{t('easierNow', { variant: easier.name })}</Button>}
      {left === null && <Button wide onClick={() => void leaveOutMovement(planned, prescription).then(setLeft)}>{t('leaveNow')}</Button>}
      <p class="note" role="status">{left !== null && t('leftMovement', { n: left })}</p>
    </div>
  );
}

/** What the phone says at once, offline, from the practice's own numbers; and the way to take the report back. */
export function Advice({ params }: { params: Record<string, string> }) {
  const event = events.value.find((one) => one.id === params.id);
  if (!event) return <NotFound />;
  const stands = standing(events.value).some((one) => one.id === event.id);
  const planned = findPlanned(String(event.body.planned_id ?? ''));
  const locked = locks.value.length > 0;
  const open = planned && !locked && event.body.when !== 'next_morning' && !progressFor(planned.planned_id).finished ? planned : null;
  const worth = painOf(event).rating >= thresholds.value.acceptable_from;
  const title = stands ? t('adviceTitle', { place: placeWords(placeOf(event)), rating: painOf(event).rating }) : t('takenBack');
  return (
    <Screen title={title} foot={<><Trouble /><ButtonLink kind="main" wide to={open ? sessionPath(open.planned_id) : '/'}>{t(open ? 'goBackSession' : 'goToToday')}</ButtonLink></>}>
      {stands && locked && <p class="urgent"><b>{t('lockedTitle')}.</b> {t('lockedUntil', { practitioner: firstName.value })}</p>}
      {stands && !locked && <Words event={event} />}
      {stands && open && worth && <Steps planned={open} prescription={String(event.body.prescription ?? '')} />}
      <div class="block"><RedFlags /><EmergencyText /></div>
      {stands && <p class="note">{t('answersWhen', { practitioner: firstName.value, reply: replyTime() })}</p>}
      {stands && <p class="centered"><Button kind="quiet" onClick={() => void withdraw(event.id)}>{t('undo')}</Button></p>}
    </Screen>
  );
}
