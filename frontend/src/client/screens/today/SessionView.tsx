import { useComputed } from '@preact/signals';
import { trouble } from '../../session/actions';
import { events, program, sessions } from '../../../outbox';
import { Button, ButtonLink } from '../../../shared/form/Button';
import { Arrow } from '../../../shared/marks/marks';
import { navigate } from '../../../shared/router';
import { answersWords, exerciseName, nameToday, sessionNote, sessionPath, setPath, walkWords } from '../../parts/names';
import { RestBar } from '../../parts/RestBar';
import { findPlanned, isFromEarlier, plan, progressFor, stonesFromEarlier } from '../../phone';
import { changedSince } from '../../session/changed';
import { restIsOver } from '../../session/rest';
import type { Planned } from '../../session/plan';
import { laidCount, nextSet } from '../../session/progress';
import { t } from '../../words';
import { Stones } from './Stones';

export function sessionTitle({ session }: Planned): string {
  return session.kind === 'circuit' ? t('roundsTitle', { name: session.name, n: session.rounds }) : session.name;
}

/** The session's answers, once given. */
function Finished({ planned }: { planned: Planned }) {
  const progress = progressFor(planned.planned_id);
  if (!progress.finished) return null;
  return (
    <p>
      <span class="done">{t('finishedWord')}</span> {answersWords(progress)}
    </p>
  );
}

function newerWaits(planned: Planned): boolean {
  return program.value !== null && program.value.number > planned.version.number;
}

/** Which movements have a new dose; the card of each says what is new. */
function Changed({ planned }: { planned: Planned }) {
  if (!planned.version.changed?.length || planned.session.kind !== 'circuit') return null;
  const changed = planned.session.prescriptions.filter((one) => changedSince(planned, one.key, plan.value, progressFor));
  if (changed.length === 0) return null;
  return <p class="note session-note"><b>{t('changedSince')}</b> {changed.map((one) => exerciseName(planned, one)).join(', ')}</p>;
}

function CircuitBody({ planned }: { planned: Planned }) {
  const progress = progressFor(planned.planned_id);
  const settled = nextSet(planned.session, progress) === null;
  return (
    <>
      <Finished planned={planned} />
      {events.value.every(({ kind }) => kind !== 'set_ticked') && <p class="note">{t('stoneHow')}</p>}
      <Stones planned={planned} end={progress.finished ? t('finishedText') : settled ? t('allSettled') : t('thenQuestions')} />
      {newerWaits(planned) && <p class="note centered">{t('newLater')}</p>}
      <p class="sr" role="status">{restIsOver.value && t('restOver')}</p>
    </>
  );
}

function WalkBody({ planned }: { planned: Planned }) {
  const walk = sessions.value.get(planned.planned_id)?.walk;
  return (
    <>
      <p class="planned">{sessionNote(planned.session)}</p>
      {walk && <p><span class="done">{t('doneWord')}</span> {walkWords(walk)}</p>}
      {!walk && <Finished planned={planned} />}
    </>
  );
}

/** What an earlier phone laid is not counted in the line of what is saved here: said, so that the numbers fit together. */
function FromEarlier({ planned_id }: { planned_id: string }) {
  if (!isFromEarlier(planned_id)) return null;
  const stones = stonesFromEarlier(planned_id);
  return <p class="note soft">{stones > 0 ? t('stonesFromEarlier', { n: stones }) : t('fromEarlier')}</p>;
}

export function SessionBody({ planned }: { planned: Planned }) {
  return (
    <>
      {planned.session.note && <p class="note session-note">{planned.session.note}</p>}
      <Changed planned={planned} />
      <FromEarlier planned_id={planned.planned_id} />
      {planned.session.kind === 'circuit' ? <CircuitBody planned={planned} /> : <WalkBody planned={planned} />}
    </>
  );
}

/** The one next step of a session. */
function MainStep({ planned }: { planned: Planned }) {
  const { session, planned_id } = planned;
  const progress = progressFor(planned_id);
  if (progress.finished) return <ButtonLink kind="other" to={`${sessionPath(planned_id)}/after`}>{t('changeAnswers')}</ButtonLink>;
  if (session.kind !== 'circuit') {
    return <ButtonLink kind="main" to={`${sessionPath(planned_id)}/after`}>{t(session.kind === 'walk' ? 'enterWalk' : 'enterCardio')}</ButtonLink>;
  }
  const next = nextSet(session, progress);
  if (!next) return <ButtonLink kind="main" to={`${sessionPath(planned_id)}/after`}>{t('finishMain')} <Arrow /></ButtonLink>;
  return (
    <ButtonLink kind="main" to={setPath(planned_id, next.prescription.key, next.round)}>
      {t('see', { exercise: nameToday(planned, next.prescription, progressFor(planned.planned_id)) })} <Arrow />
    </ButtonLink>
  );
}

export const hurtPath = (planned_id?: string): string => (planned_id ? `/hurts?session=${planned_id}` : '/hurts');

/** A tap that was not saved is said here too: the line under the title may be out of sight, and is read aloud from there. */
export function SessionFoot({ planned }: { planned: Planned }) {
  return (
    <>
      <p class="trouble" aria-hidden="true">{trouble.value && t(trouble.value === 'full' ? 'phoneFull' : 'stoneNotSaved')}</p>
      <RestBar />
      <div class="row steps">
        <MainStep planned={planned} />
        <ButtonLink kind="hurt" to={hurtPath(planned.planned_id)}>{t('itHurts')}</ButtonLink>
      </div>
    </>
  );
}

/** Begun, not finished, stones still open: one may stop here too. */
export function StopEarly({ planned }: { planned: Planned }) {
  const progress = progressFor(planned.planned_id);
  const begun = laidCount(planned.session, progress) > 0 || progress.left_out.size > 0;
  if (planned.session.kind !== 'circuit' || progress.finished || !begun || !nextSet(planned.session, progress)) return null;
  return (
    <p class="centered">
      <Button kind="quiet" onClick={() => navigate(`${sessionPath(planned.planned_id)}/after`)}>{t('stopEarly')}</Button>
    </p>
  );
}

/** Follows the plan while the page is open. */
export const usePlanned = (planned_id: string) => useComputed(() => findPlanned(planned_id)).value;
