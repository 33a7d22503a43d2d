import { useState } from 'preact/hooks';
import { dayShort } from '../../shared/dates';
import { useResource } from '../api/resource';
import type { Client, Demand, RouteReading, Trip } from '../api/types';
import { Button } from '../form/Button';
import { Link } from '../form/Link';
import { ReadFailure } from '../parts/status';
import { Doing, Looking, useMay } from '../rights/Needs';
import { t } from '../words';
import { DemandView } from './DemandView';
import { LegView } from './LegView';
import { frameOf } from './layProfile';
import { Remarks } from './Remarks';
import { TripFields } from './TripFields';
import { Upload } from './Upload';
import { useTripForm } from './useTripForm';

const [WIDE, HIGH] = [600, 140];

/** Name and day are the program's goal: said here, changed there. */
function Goal({ client, trip }: { client: string; trip: Trip }) {
  const words = trip.starts_on ? t('trpGoal', { name: trip.name ?? '', day: dayShort(trip.starts_on) }) : t('trpNoGoal');
  return <p>{words} <Doing><Link class="screen-only" to={`/clients/${client}/program`}>{t('trpGoalChange')}</Link></Doing></p>;
}

function Legs({ trip, demand }: { trip: Trip; demand: Demand | null }) {
  const frame = frameOf(trip.legs.flatMap(({ from_file }) => (from_file ? [from_file] : [])), WIDE, HIGH);
  return <>{trip.legs.map((leg, at) => <LegView key={at} number={at + 1} leg={leg} slopes={trip.slopes[at]} asked={demand?.legs[at]} frame={frame} />)}</>;
}

function Body({ client, trip, etag, demand }: { client: string; trip: Trip; etag: string; demand: Demand | null }) {
  const editing = useTripForm(client, trip, etag);
  const [reading, setReading] = useState<RouteReading | null>(null);
  const may = useMay();
  const take = (found: RouteReading) => (setReading(found), editing.takeReading(found));
  return (
    <>
      <Goal client={client} trip={trip} />
      <Doing><details class="screen-only" open={editing.changed || trip.legs.length === 0}>
        <summary>{t('trpChange')}</summary>
        <section aria-labelledby="route">
          <h2 id="route">{t('trpRoute')}</h2>
          <Upload client={client} onRead={take} />
          {reading && editing.changed && <Remarks remarks={reading.remarks} />}
        </section>
        <TripFields editing={editing} trip={trip} />
      </details></Doing>
      {trip.legs.length === 0 && !may && <p>{t('trpNoneLook')}</p>}
      {trip.legs.length > 0 && (
        <>
          {editing.changed && may && <p class="banner screen-only">{t('trpShownSaved')}</p>}
          {demand && <DemandView client={client} demand={demand} />}
          <Legs trip={trip} demand={demand} />
        </>
      )}
    </>
  );
}

/** The trip of one person: its legs, typed or read from a file, and what they ask. */
export function TripPage({ params }: { params: Record<string, string> }) {
  const id = params.id ?? '';
  const at = `/clients/${encodeURIComponent(id)}`;
  const client = useResource<Client>(at, id);
  const trip = useResource<Trip>(`${at}/trip`, id);
  const demand = useResource<Demand>(`${at}/trip/demand`, id);
  const name = client.data?.display_name;
  const isNone = demand.failure?.kind === 'problem' && demand.failure.problem.status === 404;
  const failure = client.failure ?? trip.failure ?? (isNone ? null : demand.failure);
  const retry = () => void Promise.all([client.reload(), trip.reload(), demand.reload()]);
  return (
    <main class="form-page trip-page">
      <h1>{name ? t('trpTitleOf', { name }) : t('trpTitle')}</h1>
      <p class="screen-only"><Link to={`/clients/${id}`}>{name ? t('backToPerson', { name }) : t('personTitle')}</Link>{' '}<Looking><Button small kind="quiet" onClick={() => print()}>{t('printPage')}</Button></Looking></p>
      <ReadFailure failure={failure} asOf={trip.asOf} onRetry={retry} />
      {trip.data && trip.etag ? <Body client={id} trip={trip.data} etag={trip.etag} demand={isNone ? null : demand.data} /> : !failure && <p role="status">{t('loading')}</p>}
    </main>
  );
}
