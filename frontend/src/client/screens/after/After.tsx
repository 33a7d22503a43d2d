import { useState } from 'preact/hooks';
import { events } from '../../../outbox';
import { dayShort, time } from '../../../shared/dates';
import { Button } from '../../../shared/form/Button';
import { Eleven } from '../../../shared/form/Eleven';
import { Field } from '../../../shared/form/Field';
import { Stepper } from '../../../shared/form/Stepper';
import { PlannedDay } from '../../../shared/marks/PlannedDay';
import { navigate } from '../../../shared/router';
import { Trouble } from '../../parts/Kept';
import { toFirstError } from '../../parts/firstError';
import { because, nameToday, sessionPath } from '../../parts/names';
import { BackLink, Screen } from '../../parts/Screen';
import { useDraft } from '../../parts/useDraft';
import { day, firstName, progressFor } from '../../phone';
import { firstMinutes } from '../../session/estimate';
import { entriesOf } from '../../session/log';
import type { Planned } from '../../session/plan';
import { laidCount, setsOf } from '../../session/progress';
import { t } from '../../words';
import { answersDraft, finish, type Answers } from './finish';

export const effortEnds = () => ({ 0: t('effort0'), 5: t('effort5'), 10: t('effort10') });
const MINUTES_MAX = 1440;

/** The session in one row of stones. */
function Row({ planned }: { planned: Planned }) {
  const { done, left_out } = progressFor(planned.planned_id);
  const sets = setsOf(planned.session);
  const label = t('afterPicture', { laid: laidCount(planned.session, progressFor(planned.planned_id)), all: sets.length, out: left_out.size });
  return (
    <div class="row-of-stones" role="img" aria-label={label}>
      {sets.map((set) => (
        <PlannedDay key={set.key} index={set.index} state={done.has(set.key) ? 'done' : left_out.has(set.key) ? 'left_out' : 'to_come'} />
      ))}
    </div>
  );
}

/** What was left out and why, and what is still open. */
function NotLaid({ planned }: { planned: Planned }) {
  const { done, left_out } = progressFor(planned.planned_id);
  const sets = setsOf(planned.session);
  const open = sets.filter((set) => !done.has(set.key) && !left_out.has(set.key)).length;
  return (
    <>
      {sets.filter((set) => left_out.has(set.key)).map((set) => (
        <p key={set.key} class="note soft">
          {t('afterLeftOut', { exercise: nameToday(planned, set.prescription, progressFor(planned.planned_id)), round: set.round, reason: because(left_out.get(set.key) ?? '') })}
        </p>
      ))}
      {open > 0 && <p class="note soft">{t('afterOpen', { n: open })}</p>}
    </>
  );
}

function Head({ planned }: { planned: Planned }) {
  return planned.session.kind === 'circuit' ? <><Row planned={planned} /><NotLaid planned={planned} /></> : null;
}

/** Newest answers, else what the stones or the plan say. */
function useAnswers(planned: Planned) {
  const progress = progressFor(planned.planned_id);
  const [first] = useState(() => firstMinutes(events.value, planned.planned_id, planned.session));
  const known = progress.finished ? progress.minutes : null;
  const [answers, change] = useDraft<Answers>(answersDraft(planned.planned_id), { effort: progress.effort, minutes: null, line: '' });
  return { answers, change, minutes: answers?.minutes ?? known ?? first.minutes, from: first.from };
}

function titleOf(planned: Planned): string {
  const { session } = planned;
  if (session.kind !== 'circuit') return session.name;
  return t('afterTitle', { laid: laidCount(session, progressFor(planned.planned_id)), all: setsOf(session).length });
}

const homeOf = (planned: Planned): string => (planned.day.date === day.value ? '/' : sessionPath(planned.planned_id));

/** The time of the last stone, beside the day. */
function When({ planned }: { planned: Planned }) {
  const last = entriesOf(events.value, planned.planned_id, 'set_ticked').at(-1);
  return <span>{dayShort(day.value)}{last && `, ${time(last.recorded_at)}`}</span>;
}

/** Three short questions. Each answer is kept as it is given. */
export function After({ planned }: { planned: Planned }) {
  const { answers, change, minutes, from } = useAnswers(planned);
  const [missing, setMissing] = useState(false);
  if (!answers) return <Screen title={titleOf(planned)} where={<BackLink to={homeOf(planned)} />}><Head planned={planned} /></Screen>;
  const { effort } = answers;
  const save = async () => {
    if (effort === null) return setMissing(true), toFirstError();
    if (await finish(planned, { ...answers, effort, minutes }, (line) => change({ line }))) navigate(homeOf(planned));
  };
  const button = effort === null ? t('finishOpen') : t('finish', { effort, minutes: Math.round(minutes) });
  return (
    <Screen
      title={titleOf(planned)}
      where={<><BackLink to={homeOf(planned)} /><When planned={planned} /></>}
      under={<Head planned={planned} />}
      foot={<Foot button={button} onSave={() => void save()} />}
    >
      <form class="questions" onSubmit={(event) => event.preventDefault()}>
        <Eleven legend={t('effortQuestion')} ends={effortEnds()} value={effort} error={missing && effort === null ? t('effortMissing') : null} onChange={(value) => change({ effort: value })} />
        <div>
          <Stepper label={t('minutesQuestion')} unit={t('minutes')} min={0} max={MINUTES_MAX} value={minutes} onChange={(value) => change({ minutes: Math.round(value) })} />
          <p class="note soft">{t(from === 'stones' ? 'minutesFrom' : 'minutesPlanned')}</p>
        </div>
        <Field multiline label={t('lineTo', { practitioner: firstName.value })} hint={t('lineHint')} value={answers.line} onInput={(line) => change({ line })} />
      </form>
    </Screen>
  );
}

export function Foot({ button, onSave }: { button: string; onSave: () => void }) {
  return (
    <>
      <Trouble />
      <Button kind="main" wide onClick={onSave}>{button}</Button>
      <p class="note centered foot-note">{t('answersSaved')}</p>
    </>
  );
}
