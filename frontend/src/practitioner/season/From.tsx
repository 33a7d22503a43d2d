import { useState } from 'preact/hooks';
import { addDays, dayAndMonth, fullDate } from '../../shared/dates';
import { Button } from '../form/Button';
import { Several } from '../form/Choices';
import { Select } from '../form/Field';
import { DateBox, TextBox } from '../editor/TextBox';
import { Doing, useMay } from '../rights/Needs';
import { t } from '../words';
import type { Desk } from './desk';
import { Measures } from './Measures';
import { walkWords } from './phrases';
import { addAway, removeAway } from './plan';
import { WEEKDAYS, type Plan } from './types';

/** What the season is planned from. */
export function From({ desk }: { desk: Desk }) {
  const { plan, trip } = desk.form.value;
  const set = (fields: Partial<Plan>, field: string | null = null) => desk.change((now) => ({ ...now, ...fields }), '', { field });
  const { start } = desk;
  return (
    <div onFocusOut={desk.settle}>
      <div class="ed-fields">
        <TextBox id="sea-trip" label={t('seaTripName')} value={trip} onChange={desk.nameTrip} />
        <DateBox id="sea-trip-on" label={t('seaTripOn')} value={plan.trip_on} onChange={(trip_on) => trip_on && set({ trip_on })} />
        <DateBox id="sea-starts-on" label={t('seaStartsOn')} value={plan.starts_on} onChange={(starts_on) => starts_on && set({ starts_on })} />
      </div>
      <Weekdays desk={desk} plan={plan} />
      <Counts plan={plan} set={set} />
      <Measures
        legend={t('seaWalking')}
        hint={start.walked_on ? t('seaWalkedOn', { walk: walkWords(start.walking), date: fullDate(start.walked_on) }) : t('seaWalkingAssumed')}
        level={plan.walking}
        onChange={(walking, thing) => set({ walking }, `walking-${thing}`)}
      />
      <Measures
        legend={t('seaGoal')}
        hint={start.longest_day_known ? t('seaGoalKnown', { walk: walkWords(start.longest_day) }) : t('seaGoalAssumed')}
        level={plan.longest_day}
        onChange={(longest_day, thing) => set({ longest_day }, `goal-${thing}`)}
      />
      <Away desk={desk} plan={plan} />
    </div>
  );
}

function Weekdays({ desk, plan }: { desk: Desk; plan: Plan }) {
  const choose = (days: readonly Plan['weekdays'][number][]) => desk.change((now) => ({ ...now, weekdays: WEEKDAYS.filter((day) => days.includes(day)) }));
  const options = WEEKDAYS.map((value) => ({ value, label: t(`seaDay_${value}`) }));
  const error = plan.weekdays.length === 0 ? t('seaLeastOneDay') : null;
  return <div class="sea-weekdays"><Several legend={t('seaWeekdays')} options={options} value={plan.weekdays} error={error} onChange={choose} /></div>;
}

const upTo = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => ({ value: String(from + i), label: String(from + i) }));
/** What the rules take. */
const SESSIONS_MAX = 3;
const CARDIO_MAX = 6;
const THINGS_MAX = 3;
const REST = 'rest';

function Counts({ plan, set }: { plan: Plan; set: (fields: Partial<Plan>) => void }) {
  const { strength_a_week, walks_a_week, cardio_a_week, things_a_week } = plan;
  return (
    <div class="ed-fields">
      <Select label={t('seaStrengthAWeek')} value={String(strength_a_week)} options={upTo(0, SESSIONS_MAX)} onChange={(n) => set({ strength_a_week: Number(n) })} />
      <Select label={t('seaWalksAWeek')} value={String(walks_a_week)} options={upTo(0, SESSIONS_MAX)} onChange={(n) => set({ walks_a_week: Number(n) })} />
      <Select
        label={t('seaCardioAWeek')}
        value={cardio_a_week === null ? REST : String(cardio_a_week)}
        options={[{ value: REST, label: t('seaCardioRest') }, ...upTo(0, CARDIO_MAX)]}
        onChange={(n) => set({ cardio_a_week: n === REST ? null : Number(n) })}
      />
      <Select label={t('seaThings')} value={String(things_a_week)} options={upTo(1, THINGS_MAX)} onChange={(n) => set({ things_a_week: Number(n) })} />
    </div>
  );
}

function Away({ desk, plan }: { desk: Desk; plan: Plan }) {
  const [first, setFirst] = useState(addDays(plan.starts_on, 7));
  const [last, setLast] = useState(addDays(plan.starts_on, 13));
  const wrong = last < first;
  const may = useMay();
  if (!may && plan.away.length === 0) return null;
  const add = () => !wrong && desk.change((now) => addAway(now, first, last));
  return (
    <fieldset class="sea-measures">
      <legend>{t('seaAway')}</legend>
      {plan.away.length > 0 && (
        <ul class="ed-list">
          {plan.away.map((away, i) => {
            const days = { first: dayAndMonth(away.first), last: dayAndMonth(away.last) };
            return <li key={`${away.first}-${i}`}>{t('seaAwayLine', days)} <Button small kind="quiet" onClick={() => desk.change((now) => removeAway(now, i))}>{t('seaAwayRemove', days)}</Button></li>;
          })}
        </ul>
      )}
      <Doing><div class="ed-fields">
        <DateBox id="sea-away-first" label={t('seaAwayFrom')} value={first} onChange={(date) => date && setFirst(date)} />
        <DateBox id="sea-away-last" label={t('seaAwayTo')} value={last} onChange={(date) => date && setLast(date)} />
        <div><p role="alert" class="error">{wrong ? t('seaAwayOrder') : ''}</p><Button small onClick={add}>{t('seaAwayAdd')}</Button></div>
      </div></Doing>
    </fieldset>
  );
}
