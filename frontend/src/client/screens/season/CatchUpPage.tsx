import { useState } from 'preact/hooks';
import { dayAndMonth, dayShort } from '../../../shared/dates';
import { Button } from '../../../shared/form/Button';
import { Several } from '../../../shared/form/Choices';
import { Eleven } from '../../../shared/form/Eleven';
import { Field } from '../../../shared/form/Field';
import { Stepper } from '../../../shared/form/Stepper';
import { navigate } from '../../../shared/router';
import { Trouble } from '../../parts/Kept';
import { nameToday } from '../../parts/names';
import { toFirstError } from '../../parts/firstError';
import { BackLink, Screen } from '../../parts/Screen';
import { useDraft } from '../../parts/useDraft';
import { day, progressFor } from '../../phone';
import { trouble } from '../../session/actions';
import { expectedMinutes } from '../../session/estimate';
import type { Planned } from '../../session/plan';
import { setsOf } from '../../session/progress';
import { t } from '../../words';
import { effortEnds } from '../after/After';
import { WalkEntry } from '../after/WalkEntry';
import { NotFound } from '../NotFound';
import { usePlanned } from '../today/SessionView';
import { catchUpDraft, daysFor, isDayFor, saveCatchUp, type CatchUp } from './catchUp';

interface FormProps {
  planned: Planned;
  entry: CatchUp;
  minutes: number;
  tried: boolean;
  change: (part: Partial<CatchUp>) => void;
}

function Sets({ planned, entry, tried, change }: Omit<FormProps, 'minutes'>) {
  const sets = setsOf(planned.session);
  if (sets.length === 0) return null;
  const options = sets.map((set) => ({ value: set.key, label: t('catchSet', { exercise: nameToday(planned, set.prescription, progressFor(planned.planned_id)), round: set.round }) }));
  const none = tried && entry.sets.length === 0;
  return (
    <div>
      <Several legend={t('catchSets')} options={options} value={entry.sets} error={none ? t('catchNothing') : null} onChange={(chosen) => change({ sets: chosen })} />
      <div class="row week-turn">
        <Button small onClick={() => change({ sets: sets.map((set) => set.key) })}>{t('catchAll')}</Button>
        <Button small onClick={() => change({ sets: [] })}>{t('catchNone')}</Button>
      </div>
    </div>
  );
}

function Form({ planned, entry, minutes, tried, change }: FormProps) {
  const [first, last] = daysFor(planned, day.value).map(dayAndMonth) as [string, string];
  const wrong = tried && !isDayFor(planned, entry.day, day.value);
  return (
    <form class="questions" onSubmit={(event) => event.preventDefault()}>
      <Field type="date" label={t('catchDay')} hint={t('catchDayHint', { first, last })} value={entry.day} error={wrong ? t('catchDayWrong', { first, last }) : null} onInput={(date) => change({ day: date })} />
      <Sets planned={planned} entry={entry} tried={tried} change={change} />
      <Eleven legend={t('effortQuestion')} ends={effortEnds()} value={entry.effort} error={tried && entry.effort === null ? t('effortMissing') : null} onChange={(effort) => change({ effort })} />
      <Stepper label={t('minutesQuestion')} unit={t('minutes')} min={0} max={1440} value={minutes} onChange={(value) => change({ minutes: Math.round(value) })} />
    </form>
  );
}

function isWhole(planned: Planned, entry: CatchUp): entry is CatchUp & { effort: number } {
  const someSet = planned.session.kind !== 'circuit' || entry.sets.length > 0;
  return isDayFor(planned, entry.day, day.value) && entry.effort !== null && someSet;
}

/** "I did this on ...": an earlier day of the program, entered now. */
function Entry({ planned }: { planned: Planned }) {
  const { done } = progressFor(planned.planned_id);
  const initial: CatchUp = { day: planned.day.date, sets: [...done], effort: null, minutes: null };
  const [entry, change] = useDraft<CatchUp>(catchUpDraft(planned.planned_id), initial);
  const [tried, setTried] = useState(false);
  const minutes = entry?.minutes ?? expectedMinutes(planned.session) ?? 0;
  const save = async () => {
    setTried(true);
    if (!entry || !isWhole(planned, entry)) return toFirstError();
    if (await saveCatchUp(planned, { ...entry, minutes })) navigate('/season');
  };
  return (
    <Screen
      title={planned.session.name}
      where={<><BackLink to="/season">{t('season')}</BackLink><span>{dayShort(planned.day.date)}</span></>}
      foot={<><Trouble />{trouble.value && <p class="note">{t('catchPart')}</p>}<Button kind="main" wide onClick={() => void save()}>{t('catchSave')}</Button></>}
    >
      {entry && <Form planned={planned} entry={entry} minutes={minutes} tried={tried} change={change} />}
    </Screen>
  );
}

export function CatchUpPage({ params }: { params: Record<string, string> }) {
  const planned = usePlanned(params.id ?? '');
  if (!planned || planned.session.kind === 'rest' || planned.day.date > day.value) return <NotFound />;
  return planned.session.kind === 'walk' ? <WalkEntry planned={planned} on={planned.day.date} /> : <Entry planned={planned} />;
}
