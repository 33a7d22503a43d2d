import { distance, height } from '../../shared/units';
import type { Demand } from '../api/types';
import { Link } from '../form/Link';
import { Doing } from '../rights/Needs';
import { Citation } from '../sources/Citation';
import { t } from '../words';
import { hours, kcal, percent, shown } from './words';

const orUnknown = (value: number | null, show: (value: number) => string): string => (value === null ? t('trpNotKnown') : show(value));

const Days = ({ days }: Pick<Demand, 'days'>) => (
  <div class="table-scroll" role="region" aria-label={t('trpDays')} tabIndex={0}>
    <table class="plain">
      <thead><tr><th scope="col">{t('trpDay')}</th><th scope="col">{t('trpDistance')}</th><th scope="col">{t('trpAscent')}</th><th scope="col">{t('trpDescent')}</th><th scope="col">{t('trpTime')}</th><th scope="col">{t('trpEnergy')}</th><th scope="col">{t('trpDownWork')}</th></tr></thead>
      <tbody>
        {days.map((one) => (
          <tr key={one.day}>
            <th scope="row">{one.day}</th>
            <td class="tnum">{distance(one.distance_km)}</td>
            <td class="tnum">{orUnknown(one.ascent_m, height)}</td>
            <td class="tnum">{orUnknown(one.descent_m, height)}</td>
            <td class="tnum">{hours(one.hours)}</td>
            <td class="tnum">{one.low_kcal === null || one.high_kcal === null ? t('trpNotKnown') : t('trpBandShort', { low: kcal(one.low_kcal), high: kcal(one.high_kcal) })}</td>
            <td class="tnum">{orUnknown(one.descent_work_kj, (value) => `${shown(value)} kJ`)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);

/** What the numbers stand on for this person, and what is missing for better ones, each with the way to it. */
function Basis({ client, demand }: { client: string; demand: Demand }) {
  const { body_mass_kg, pace, walks, walks_needed, six_minute_walk_m } = demand;
  return (
    <ul class="facts">
      {body_mass_kg === null && <li><b>{t('trpNoMass')}</b> <Doing><Link to={`/clients/${client}/edit`}>{t('editLink')}</Link></Doing></li>}
      <li>{pace === null ? t('trpNoPace', { n: walks, needed: walks_needed }) : t('trpPace', { n: walks, percent: percent(pace * 100) })}</li>
      <li>{six_minute_walk_m === null ? t('trpNoWalk') : t('trpWalk', { metres: height(six_minute_walk_m) })} {six_minute_walk_m === null && <Link to={`/clients/${client}/tests`}>{t('tstTitle')}</Link>}</li>
      {demand.legs.some(({ ascent_m }) => ascent_m === null) && <li><b>{t('trpSomeUnknown')}</b></li>}
      {demand.legs.some(({ energy }) => energy !== null && energy.pack_percent > demand.pack_habit_percent) && <li><b class="call">{t('trpPackHeavy', { percent: demand.pack_habit_percent })}</b></li>}
    </ul>
  );
}

/** Day by day, what the trip asks, and how far to trust it. */
export function DemandView({ client, demand }: { client: string; demand: Demand }) {
  return (
    <section aria-labelledby="demand">
      <h2 id="demand">{t('trpDemand')}</h2>
      <p>{t('trpDemandIntro')}</p>
      <Days days={demand.days} />
      <Basis client={client} demand={demand} />
      <p class="urgent">{t('trpCaution')}</p>
      <div class="screen-only trip-sources">{demand.sources.map((code) => <Citation key={code} code={code} />)}</div>
    </section>
  );
}
