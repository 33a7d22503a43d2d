import { useEffect } from 'preact/hooks';
import { events, program } from '../../../outbox';
import { dayOf, standing as standingEvents } from '../../../outbox/fold';
import { placeWords, type Place } from '../../../shared/body/places';
import { addDays } from '../../../shared/dates';
import { Button, ButtonLink } from '../../../shared/form/Button';
import { setCount } from '../../../shared/program';
import { Link } from '../../../shared/router';
import { dayWords, sessionNote, sessionPath, walkWords } from '../../parts/names';
import { useDraft } from '../../parts/useDraft';
import { day, firstName, progressFor } from '../../phone';
import { withdraw } from '../../session/actions';
import { morningQuestions, painOf } from '../../session/log';
import type { Planned } from '../../session/plan';
import { laidCount, standing } from '../../session/progress';
import { t } from '../../words';

function Line({ planned, go }: { planned: Planned; go: string }) {
  const laid = laidCount(planned.session, progressFor(planned.planned_id));
  const note = laid > 0 ? t('partLaid', { laid, all: setCount(planned.session) }) : sessionNote(planned.session);
  return (
    <li>
      <span>
        <b>{planned.session.name}</b> <small>{note}</small>
      </span>
      <ButtonLink small to={sessionPath(planned.planned_id)}>{go}<span class="sr"> {planned.session.name}</span></ButtonLink>
    </li>
  );
}

/** Other sessions of today. */
export function AlsoToday({ list }: { list: readonly Planned[] }) {
  if (list.length === 0) return null;
  return (
    <section class="block">
      <h2>{t('alsoToday')}</h2>
      <ul class="lines">{list.map((planned) => <Line key={planned.planned_id} planned={planned} go={t('look')} />)}</ul>
    </section>
  );
}

/** Earlier in this week, and still to be had. */
export function StillOpen({ list }: { list: readonly Planned[] }) {
  if (list.length === 0) return null;
  return (
    <section class="block">
      <h2>{t('openTitle')}</h2>
      <ul class="lines">
        {list.map((planned) => (
          <li key={planned.planned_id}>
            <span>{t('openText', { name: planned.session.name, day: dayWords(planned.day.date) })}</span>
            <ButtonLink small to={sessionPath(planned.planned_id)}>{t('doToday')}<span class="sr"> {planned.session.name}</span></ButtonLink>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Walks entered today outside the plan. */
export function Extras() {
  const walks = standingEvents(events.value).filter((event) => event.kind === 'walk_logged' && !event.body.planned_id && dayOf(event) === day.value);
  return (
    <section class="block">
      {walks.length > 0 && <h2>{t('otherDone')}</h2>}
      {walks.length > 0 && <ul class="lines">
        {walks.map((event) => (
          <li key={event.id}>
            <span><span class="done">{t('doneWord')}</span> {walkWords(event.body as never)}</span>
            <Button small kind="quiet" onClick={() => void withdraw(event.id)}>{t('undo')}</Button>
          </li>
        ))}
      </ul>}
      <Link class="tap" to="/walk">{t('otherWalk')}</Link>
    </section>
  );
}

/** The morning after: one quiet question a place. Put away, it does not come again that day. */
export function Morning() {
  const [put, setPut] = useDraft<{ day: string }>('morning', { day: '' });
  const [first] = morningQuestions(events.value, day.value, addDays(day.value, -1));
  if (!first || !put || put.day === day.value) return null;
  const { region, side, aspect, rating } = painOf(first);
  return (
    <section class="sheet">
      <h2>{t('morningTitle', { place: placeWords({ region, side, aspect } as Place) })}</h2>
      <p class="note">{t('morningWhy', { rating })}</p>
      <div class="row">
        <ButtonLink small to={`/hurts/how?morning=${first.id}`}>{t('morningAnswer')}</ButtonLink>
        <Button small kind="quiet" onClick={() => setPut({ day: day.value })}>{t('morningLater')}</Button>
      </div>
    </section>
  );
}

function isBegun({ planned_id, session }: Planned): boolean {
  const progress = progressFor(planned_id);
  return !progress.finished && standing(session, progress) === 'partly';
}

/** What changed in a new version, once. Never while someone stands among the stones. */
export function NewVersion({ among }: { among: Planned | null }) {
  const [seen, setSeen] = useDraft<{ number: number }>('seen-version', { number: 0 });
  const newest = program.value;
  useEffect(() => {
    // The first version this phone ever had is no news.
    if (newest && seen?.number === 0) setSeen({ number: newest.number });
  }, [newest?.number, seen?.number]);
  if (!newest || !seen || seen.number === 0 || newest.number <= seen.number || newest.changes.length === 0) return null;
  if (among && isBegun(among)) return null;
  return (
    <section class="sheet">
      <h2>{t('newTitle', { practitioner: firstName.value })}</h2>
      <ul class="cues">{newest.changes.map((change) => <li key={change}>{change}</li>)}</ul>
      <Button small onClick={() => setSeen({ number: newest.number })}>{t('newSeen')}</Button>
    </section>
  );
}
