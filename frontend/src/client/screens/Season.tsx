import { useState } from 'preact/hooks';
import { earlier, program, trip } from '../../outbox';
import { addDays, dayAndMonth, daysBetween, mondayOf, type LocalDate } from '../../shared/dates';
import { Button } from '../../shared/form/Button';
import { Cairn } from '../../shared/marks/marks';
import { Ridge } from '../../shared/ridge/Ridge';
import { distance, height } from '../../shared/units';
import { sessionNote } from '../parts/names';
import { Screen } from '../parts/Screen';
import { day, firstName, now, plan, progress } from '../phone';
import { loadsOf, ridgeWeeks, unknownSpans } from '../season/loads';
import { since } from '../season/since';
import { isWork } from '../session/day';
import { t } from '../words';
import { Week } from './season/Week';

const Key = () => (
  <p class="key">
    <span><svg viewBox="0 0 26 16" aria-hidden="true"><path class="outline" d="M1 14 8 5 13 9 20 2 25 8" /></svg>{t('keyPlanned')}</span>
    <span><svg viewBox="0 0 26 16" aria-hidden="true"><path class="fill" d="M1 16V12L8 4 13 8 20 2 25 9V16Z" /></svg>{t('keyDone')}</span>
    <span><Cairn />{t('keyTrip')}</span>
  </p>
);

function Picture() {
  const weeks = ridgeWeeks(loadsOf(plan.value, progress.value), day.value, since.value);
  const content = program.value?.content;
  const end = content?.goal ?? (content?.ends_on ? { name: '', date: content.ends_on } : null);
  const share = (now.value.getHours() * 60 + now.value.getMinutes()) / 1440;
  return (
    <>
      <Ridge weeks={weeks} today={day.value} dayShare={share} heardUntil={day.value} heardShare={share} unheard={unknownSpans(weeks, day.value)} trip={end} />
      <Key />
      {earlier.value.size > 0 && <p class="note soft">{t('seasonEarlier')}</p>}
    </>
  );
}

function weekTitle(monday: LocalDate): string {
  const apart = daysBetween(mondayOf(day.value), monday) / 7;
  if (apart === 0) return t('thisWeek');
  if (apart === -1) return t('lastWeek');
  return apart === 1 ? t('nextWeek') : t('weekFrom', { day: dayAndMonth(monday) });
}

/** One week at a time, earlier and later ones a tap away. */
function Weeks() {
  const [monday, setMonday] = useState(() => mondayOf(day.value));
  const first = mondayOf(plan.value[0]?.day.date ?? day.value);
  const last = mondayOf(plan.value.at(-1)?.day.date ?? day.value);
  return (
    <section class="block">
      <h2 aria-live="polite">{weekTitle(monday)}</h2>
      <Week monday={monday} />
      <div class="row week-turn">
        {monday > first && <Button small onClick={() => setMonday(addDays(monday, -7))}>{t('earlierWeek')}</Button>}
        {monday < last && <Button small onClick={() => setMonday(addDays(monday, 7))}>{t('laterWeek')}</Button>}
      </div>
    </section>
  );
}

function Tomorrow() {
  const tomorrow = plan.value.filter((planned) => isWork(planned) && planned.day.date === addDays(day.value, 1));
  return (
    <section class="block">
      <h2>{t('tomorrow')}</h2>
      {tomorrow.length === 0 && <p>{t('tomorrowRest')}</p>}
      {tomorrow.map(({ planned_id, session }) => <p key={planned_id}><b>{session.name}</b> <small class="soft">{sessionNote(session)}</small></p>)}
    </section>
  );
}

/** The days of the trip in brief, so that the person knows what they train for. */
function TripDays() {
  const legs = trip.value?.legs ?? [];
  if (legs.length === 0) return null;
  const climbs = ({ ascent_m: up, descent_m: down }: (typeof legs)[number]) => (up === null || down === null ? t('tripHeightsUnknown') : t('tripUpDown', { up: height(up), down: height(down) }));
  return (
    <section class="block">
      <h2>{t('tripDays')}</h2>
      {legs.map((leg, i) => <p key={i}><b>{leg.name ? t('tripDayNamed', { n: leg.day, name: leg.name }) : t('tripDay', { n: leg.day })}</b> <small class="soft">{distance(leg.distance_km)}, {climbs(leg)}</small></p>)}
    </section>
  );
}

/** "Week 10 of 16" and the days to go. */
function Where() {
  const [first, last] = [plan.value[0]?.day.date, plan.value.at(-1)?.day.date];
  const goal = program.value?.content.goal;
  if (!first || !last) return null;
  const weekOf = (date: LocalDate) => Math.floor(daysBetween(mondayOf(first), date) / 7) + 1;
  const toGo = goal ? daysBetween(day.value, goal.date) : -1;
  const week = Math.min(Math.max(weekOf(day.value), 1), weekOf(last));
  return (
    <>
      <span>{t('weekOf', { week, weeks: weekOf(last) })}</span>
      <span>{toGo >= 0 && t('daysToGo', { n: toGo })}</span>
    </>
  );
}

export function Season() {
  const content = program.value?.content;
  const title = content?.goal ? t('wayTo', { goal: content.goal.name }) : (content?.title ?? t('wayPlain'));
  if (!content) return <Screen title={title} tabs><p>{t('seasonNone', { practitioner: firstName.value })}</p></Screen>;
  return (
    <Screen title={title} where={<Where />} tabs>
      <Picture />
      <Weeks />
      <Tomorrow />
      <TripDays />
    </Screen>
  );
}
