import { addDays } from '../../shared/dates';
import { Ridge } from '../../shared/ridge/Ridge';
import { Button } from '../form/Button';
import { useWide } from '../parts/useWidth';
import { Doing } from '../rights/Needs';
import { t } from '../words';
import type { Desk } from './desk';
import { measured } from './phrases';
import { accept, settleFor, tripLater } from './plan';
import type { Proposal, Shortfall } from './types';

/** The plan alone: nothing of it is done or heard yet, so today stands before its first week. */
function Picture({ desk, weeks }: { desk: Desk; weeks: Proposal['weeks'] }) {
  const { wide, box } = useWide(600);
  const shown = weeks.map(({ ends_on, planned_load }) => ({ starts_on: addDays(ends_on, -6), planned_load, done_load: 0, heard: 'none' as const, due_share: null }));
  const { trip, plan } = desk.form.value;
  return (
    <section aria-label={t('seaPicture')} ref={box} class="season-large">
      {shown[0] && <Ridge weeks={shown} wide={wide} today={addDays(shown[0].starts_on, -1)} heardUntil={null} trip={trip ? { name: trip, date: plan.trip_on } : null} />}
    </section>
  );
}

function Short({ desk, short }: { desk: Desk; short: Shortfall }) {
  const { thing } = short;
  const reached = measured(thing, short.reached);
  if (short.accepted) {
    return (
      <li>
        {t(`seaShort_${thing}`, { reached, short: measured(thing, short.short_by), wanted: measured(thing, short.wanted) })} <b>{t('seaAccepted')}</b>{' '}
        <Button small kind="quiet" onClick={() => desk.change((plan) => accept(plan, thing, false))}>{t('seaNotAccepted')}</Button>
      </li>
    );
  }
  return (
    <li>
      <p>{t(`seaShort_${thing}`, { reached, short: measured(thing, short.short_by), wanted: measured(thing, short.wanted) })}</p>
      <Doing><p class="ed-row">
        <Button small onClick={() => desk.change((plan) => tripLater(plan, short.weeks_more))}>{t('seaLater', { n: short.weeks_more })}</Button>
        <Button small onClick={() => desk.change((plan) => settleFor(plan, short))}>{t(`seaShorter_${thing}`, { reached })}</Button>
        <Button small onClick={() => desk.change((plan) => accept(plan, thing, true))}>{t('seaAccept')}</Button>
      </p></Doing>
    </li>
  );
}

/** The season as a ridge, and what it does not reach in time, with the choices there are. */
export function Outlook({ desk, season }: { desk: Desk; season: Proposal }) {
  return (
    <>
      <Picture desk={desk} weeks={season.weeks} />
      {season.shortfalls.length > 0 && (
        <section aria-labelledby="sea-short">
          <h2 id="sea-short">{t('seaShortTitle')}</h2>
          <ul class="ed-list">{season.shortfalls.map((short) => <Short key={short.thing} desk={desk} short={short} />)}</ul>
        </section>
      )}
      {season.notes.length > 0 && (
        <section aria-labelledby="sea-notes">
          <h2 id="sea-notes">{t('seaNotes')}</h2>
          <ul class="ed-list" lang="en">{season.notes.map((note) => <li key={note}>{note}</li>)}</ul>
        </section>
      )}
    </>
  );
}
