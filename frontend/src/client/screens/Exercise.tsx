import { useState } from 'preact/hooks';
import { events } from '../../outbox';
import { Button, ButtonLink } from '../../shared/form/Button';
import { time } from '../../shared/dates';
import { Arrow, Tick } from '../../shared/marks/marks';
import type { Circuit } from '../../shared/program';
import { Trouble } from '../parts/Kept';
import { because, exerciseName, nameToday, sessionPath, setPath } from '../parts/names';
import { RestBar } from '../parts/RestBar';
import { BackLink, Screen } from '../parts/Screen';
import { day, locks, plan, progressFor } from '../phone';
import { lay, takeUp, type Really } from '../session/actions';
import { changedSince } from '../session/changed';
import { doneToday, findExercise } from '../session/library';
import { reallyDone } from '../session/log';
import type { Planned } from '../session/plan';
import { setAfter, setKey, setsOf, type SetPlace } from '../session/progress';
import { restIsOver } from '../session/rest';
import { t } from '../words';
import { Locked } from './care/Locked';
import { Cues, Dose, Plate, Texts } from './exercise/Card';
import { Hold } from './exercise/Hold';
import { LeaveOut } from './exercise/LeaveOut';
import { ReallyDone } from './exercise/Really';
import { OrInstead } from './exercise/OrInstead';
import { Rungs } from './exercise/Rungs';
import { NotFound } from './NotFound';
import { usePlanned } from './today/SessionView';
import { doseInUse } from './today/Stones';

interface Here {
  planned: Planned;
  set: SetPlace;
}

/** Under the title: laid at, or left out because; and the way back from it. */
function State({ planned, set }: Here) {
  const progress = progressFor(planned.planned_id);
  const reason = progress.left_out.get(set.key);
  const tick = progress.done.has(set.key) ? reallyDone(events.value, planned.planned_id, set.prescription.key, set.round) : null;
  return (
    <p class="kept-one note" role="status">
      {tick && <><b>{t('laidAt', { time: time(tick.recorded_at) })}</b> {t('savedHere')} </>}
      {progress.done.has(set.key) && !tick && <b>{t('laidEarlier')} </b>}
      {reason && <b>{t('leftOutBecause', { reason: because(reason) })} </b>}
      {(progress.done.has(set.key) || reason) && <button type="button" class="link" onClick={() => void takeUp(planned, set)}>{t('takeUp')}</button>}
    </p>
  );
}

const hurtPath = (planned: Planned, set: SetPlace) => `/hurts?session=${planned.planned_id}&set=${set.prescription.key}`;

/** Before the stone is laid: lay it. After: go on to the next one, the rest running above. */
function Foot({ planned, set, really }: Here & { really: Really }) {
  const progress = progressFor(planned.planned_id);
  const settled = progress.done.has(set.key) || progress.left_out.has(set.key);
  const after = setAfter(planned.session, progress, set.key);
  const hurt = hurtPath(planned, set);
  return (
    <>
      <Trouble />
      <RestBar />
      <div class="row steps">
        {!settled && <Button kind="main" onClick={() => void lay(planned, set, really)}>{t('layStone')} <Tick /></Button>}
        {settled && after && (
          <ButtonLink kind="main" to={setPath(planned.planned_id, after.prescription.key, after.round)}>
            {t('goOnTo', { exercise: nameToday(planned, after.prescription, progress) })} <Arrow />
          </ButtonLink>
        )}
        {settled && !after && <ButtonLink kind="main" to={`${sessionPath(planned.planned_id)}/after`}>{t('goOnQuestions')} <Arrow /></ButtonLink>}
        <ButtonLink kind="hurt" to={hurt}>{t('itHurts')}</ButtonLink>
      </div>
    </>
  );
}

function Card({ planned, set }: Here) {
  const [really, setReally] = useState<Really>({});
  const progress = progressFor(planned.planned_id);
  const { as, variant: now } = doneToday(set.prescription, progress.swaps[set.prescription.key]);
  const exercise = findExercise(planned.version.exercises, as.exercise);
  const variant = exercise?.ladder.find((rung) => rung.variant === now) ?? null;
  const dose = doseInUse(planned, set, progress);
  const settled = progress.done.has(set.key) || progress.left_out.has(set.key);
  const { rounds } = planned.session as Circuit;
  const change = changedSince(planned, set.prescription.key, plan.value, progressFor);
  const at = t('setPlace', { round: set.round, rounds, set: set.index + 1, sets: setsOf(planned.session).length });
  const home = planned.day.date === day.value ? '/' : sessionPath(planned.planned_id);
  return (
    <Screen
      title={exerciseName(planned, as)}
      where={<><BackLink to={home}>{planned.day.date === day.value ? t('today') : t('back')}</BackLink><span>{at}</span></>}
      under={<State planned={planned} set={set} />}
      foot={<Foot planned={planned} set={set} really={really} />}
    >
      <p class="sr" role="status">{restIsOver.value && t('restOver')}</p>
      <Plate exercise={exercise} variant={variant} note={as.note} />
      {change && <p class="changed"><b>{t('changedSince')}</b> {change}</p>}
      <Dose dose={dose} />
      {dose.hold_s !== null && !settled && <Hold dose={dose} setName={`${planned.planned_id} ${set.key}`} />}
      <Cues exercise={exercise} />
      {!settled && <Rungs planned={planned} prescription={as} instead={as !== set.prescription} exercise={exercise} now={now} />}
      {!settled && <OrInstead planned={planned} prescription={set.prescription} as={as} now={now} />}
      <Texts exercise={exercise} />
      {!settled && <ReallyDone dose={dose} canCarry={variant !== null && variant.load !== 'none'} value={really} onChange={setReally} />}
      {!settled && <LeaveOut planned={planned} set={set} hurt={hurtPath(planned, set)} />}
    </Screen>
  );
}

/** One set: how it is done, how much, easier and harder ways, and its stone. */
export function Exercise({ params }: { params: Record<string, string> }) {
  const planned = usePlanned(params.id ?? '');
  const key = setKey(params.prescription ?? '', Number(params.round));
  const set = planned && setsOf(planned.session).find((one) => one.key === key);
  if (locks.value.length > 0) return <Locked />;
  return planned && set ? <Card key={key} planned={planned} set={set} /> : <NotFound />;
}
