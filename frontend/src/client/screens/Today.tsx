import { program } from '../../outbox';
import { daysBetween, dayShort } from '../../shared/dates';
import { ButtonLink } from '../../shared/form/Button';
import { Cairn } from '../../shared/marks/marks';
import { Kept } from '../parts/Kept';
import { dayWords } from '../parts/names';
import { Notices } from '../parts/Notices';
import { Screen } from '../parts/Screen';
import { day, dayNow, firstName, locks, progressFor } from '../phone';
import { mainSession, type DayPlan } from '../session/day';
import type { Planned } from '../session/plan';
import { t } from '../words';
import { ClearedNews, Locked } from './care/Locked';
import { HealthOffer } from './health/Offer';
import { AlsoToday, Extras, Morning, NewVersion, StillOpen } from './today/Lists';
import { hurtPath, SessionBody, SessionFoot, sessionTitle, StopEarly } from './today/SessionView';

/** "45 days to Harrowcomb" */
export function toGoal(): string {
  const goal = program.value?.content.goal;
  const days = goal ? daysBetween(day.value, goal.date) : -1;
  if (!goal || days < 0) return '';
  return days === 0 ? t('goalToday', { goal: goal.name }) : t('daysToGoal', { n: days, goal: goal.name });
}

export const Where = () => (
  <>
    <span>{dayShort(day.value)}</span>
    <span>{toGoal()}</span>
  </>
);

const TITLE = { none: 'noneTitle', before: 'beforeTitle', over: 'overTitle', running: 'restTitle' } as const;

function emptyTitle(plan: DayPlan): string {
  if (plan.kind === 'before') return t('beforeTitle', { day: plan.next ? dayWords(plan.next.day.date) : dayWords(program.value?.content.starts_on ?? day.value) });
  return t(TITLE[plan.kind] as 'restTitle');
}

function EmptyText({ plan }: { plan: DayPlan }) {
  const next = plan.next && t('restNext', { day: dayWords(plan.next.day.date), name: plan.next.session.name });
  if (plan.kind === 'none') return <p>{t('noneText', { practitioner: firstName.value })}</p>;
  if (plan.kind === 'over') return <p>{t('overText', { practitioner: firstName.value })}</p>;
  if (plan.kind === 'before') return <p>{plan.next && t('beforeText', { name: plan.next.session.name })}</p>;
  return (
    <>
      {plan.rest?.session.note && <p>{plan.rest.session.note}</p>}
      <p>{t('restText')} {next}</p>
    </>
  );
}

/** A day that asks for nothing: the cairn and what comes next. */
function EmptyDay({ plan }: { plan: DayPlan }) {
  return (
    <Screen
      title={emptyTitle(plan)}
      where={<Where />}
      under={plan.kind === 'none' ? undefined : <Kept />}
      tabs
      foot={<div class="row steps"><ButtonLink kind="hurt" to={hurtPath()}>{t('itHurts')}</ButtonLink></div>}
    >
      <Notices />
      <ClearedNews />
      <HealthOffer />
      <Morning />
      <NewVersion among={null} />
      <div class="quiet">
        <Cairn filled={plan.kind === 'over'} />
        <EmptyText plan={plan} />
      </div>
      <StillOpen list={plan.open} />
      {plan.kind !== 'none' && <Extras />}
    </Screen>
  );
}

function TrainingDay({ planned, plan }: { planned: Planned; plan: DayPlan }) {
  return (
    <Screen
      title={sessionTitle(planned)}
      where={<Where />}
      under={<Kept planned_id={planned.session.kind === 'circuit' ? planned.planned_id : null} />}
      tabs
      foot={<SessionFoot planned={planned} />}
    >
      <Notices />
      <ClearedNews />
      <HealthOffer />
      <Morning />
      <NewVersion among={planned} />
      <SessionBody planned={planned} />
      <StopEarly planned={planned} />
      <AlsoToday list={plan.today.filter((other) => other.planned_id !== planned.planned_id)} />
      <StillOpen list={plan.open} />
      <Extras />
    </Screen>
  );
}

export function Today() {
  if (locks.value.length > 0) return <Locked />;
  const plan = dayNow.value;
  const main = mainSession(plan, progressFor);
  return main ? <TrainingDay planned={main} plan={plan} /> : <EmptyDay plan={plan} />;
}
