import { useState } from 'preact/hooks';
import { sessions } from '../../../outbox';
import { Button } from '../../../shared/form/Button';
import { Eleven } from '../../../shared/form/Eleven';
import { Field } from '../../../shared/form/Field';
import type { Walk } from '../../../shared/program';
import { distance, height, mass, unitOf, unitSystem } from '../../../shared/units';
import { navigate } from '../../../shared/router';
import { Trouble } from '../../parts/Kept';
import { toFirstError } from '../../parts/firstError';
import { BackLink, Screen } from '../../parts/Screen';
import { useDraft } from '../../parts/useDraft';
import { day, progressFor } from '../../phone';
import type { Planned } from '../../session/plan';
import { t } from '../../words';
import { effortEnds } from './After';
import { WalkFile } from './WalkFile';
import { readWalk, saveWalk, typedAsPlanned, typedFrom, WALK_FIELDS, type Typed, type WalkErrors, type WalkField } from './walk';

const SHOW = { distance, height, mass } as const;

function plannedHint(walk: Walk | null, field: WalkField): string | undefined {
  if (!walk) return undefined;
  const { quantity, body } = WALK_FIELDS[field];
  return t('plannedValue', { value: SHOW[quantity](walk[body]) });
}

function errorText(field: WalkField, errors: WalkErrors): string | null {
  const { quantity, most } = WALK_FIELDS[field];
  if (errors[field] === 'too_much') return t('tooMuch', { most: SHOW[quantity](most) });
  return errors[field] ? t('walkMissing') : null;
}

interface FormProps {
  typed: Typed;
  change: (part: Partial<Typed>) => Promise<void>;
  errors: WalkErrors;
  walk: Walk | null;
}

function Form({ typed, change, errors, walk }: FormProps) {
  return (
    <form class="questions" onSubmit={(event) => event.preventDefault()}>
      <div class="pairs">
        {(Object.keys(WALK_FIELDS) as WalkField[]).map((field) => (
          <Field key={field} label={t(field)} unit={unitOf(WALK_FIELDS[field].quantity)} inputMode="decimal" hint={plannedHint(walk, field)} value={typed[field]} error={errorText(field, errors)} onInput={(text) => void change({ [field]: text })} />
        ))}
        <Field label={t('minutesQuestion')} unit={t('minutes')} inputMode="numeric" value={typed.minutes} error={errors.minutes && t('minutesMissing')} onInput={(minutes) => void change({ minutes })} />
        <Field label={t('walkDay')} type="date" value={typed.day} error={errors.day && t('dayMissing')} onInput={(date) => void change({ day: date })} />
      </div>
      <Eleven legend={t('effortQuestion')} ends={effortEnds()} value={typed.effort} onChange={(effort) => void change({ effort })} />
    </form>
  );
}

/** The form as it opens: what was entered for this walk before, else the plan, else empty. */
function firstTyped(planned: Planned | null, on: string): Typed {
  const known = planned && sessions.value.get(planned.planned_id)?.walk;
  if (planned && known) return typedFrom(known, progressFor(planned.planned_id).effort, on);
  return planned?.session.kind === 'walk' ? typedAsPlanned(planned.session, on) : typedFrom(null, null, on);
}

/** A walk, planned or not. `on` is the day the form opens with. */
export function WalkEntry({ planned, on = day.value }: { planned: Planned | null; on?: string }) {
  const draft = `walk.${planned?.planned_id ?? 'other'}.${unitSystem.value}`;
  const [typed, change] = useDraft<Typed>(draft, firstTyped(planned, on));
  const [tried, setTried] = useState(false);
  const walk = planned?.session.kind === 'walk' ? planned.session : null;
  const read = typed && readWalk(typed, day.value);
  const save = async () => {
    setTried(true);
    if (read?.body && (await saveWalk(planned, read.body, draft))) navigate('/');
    else if (!read?.body) toFirstError();
  };
  return (
    <Screen
      title={planned?.session.name ?? t('walkEntryTitle')}
      where={<BackLink to="/">{t('today')}</BackLink>}
      foot={<><Trouble /><Button kind="main" wide onClick={() => void save()}>{t('saveWalk')}</Button><p class="note centered foot-note">{t('walkKept')}</p></>}
    >
      {typed && <WalkFile onRead={change} shared={planned ? 'never' : typed.shared ? 'asks' : 'comes'} />}
      {typed && <Form typed={typed} change={change} errors={tried ? (read?.errors ?? {}) : {}} walk={walk} />}
    </Screen>
  );
}
