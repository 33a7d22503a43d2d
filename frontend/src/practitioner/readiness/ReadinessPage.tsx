import './readiness.css';
import { dayAndMonth, daysBetween, fullDate } from '../../shared/dates';
import { useResource } from '../api/resource';
import { me } from '../api/session';
import type { Client, Readiness, ReadinessShown } from '../api/types';
import { Button, ButtonLink } from '../form/Button';
import { Link } from '../form/Link';
import { SILENT_DAYS } from '../parts/heard';
import { ReadFailure } from '../parts/status';
import { Doing, Looking } from '../rights/Needs';
import { t } from '../words';
import { Items } from './Items';
import { NoteForm } from './NoteForm';
import { History, StandingNote } from './Notes';
import { countWords, dayWords } from './sentences';

const CAUTION_LINKS = { symptom: '', open_findings: '', clearance_required: '/screening', clearance_recommended: '/screening', not_screened: '/screening' } as const;
const BLOCKING: readonly string[] = ['symptom', 'clearance_required'];

function whenWords({ trip, weeks_left, weeks_to_build, as_of }: ReadinessShown): string {
  if (!trip?.starts_on) return t('rdyNoDate');
  const date = fullDate(trip.starts_on);
  const begins = trip.name ? t('rdyTripBegins', { name: trip.name, date }) : t('rdyTripDated', { date });
  if (daysBetween(as_of, trip.starts_on) <= 0) return `${begins} ${t('rdyBegun')}`;
  return `${begins} ${weeks_left ? t('rdyWeeks', { n: weeks_left, build: weeks_to_build ?? 0 }) : t('rdyWeeksNone')}`;
}

function heardWords({ heard_on, as_of }: ReadinessShown): string {
  if (!heard_on) return t('rdyNeverHeard');
  return t(daysBetween(heard_on, as_of) < SILENT_DAYS ? 'rdyHeard' : 'rdySilent', { day: dayAndMonth(heard_on) });
}

function Trip({ client, shown }: { client: string; shown: ReadinessShown }) {
  const { trip } = shown;
  if (!trip) {
    return (
      <section aria-labelledby="trip"><h2 id="trip">{t('rdyTrip')}</h2><p>{t('rdyNoTrip')}</p><Doing><p class="actions screen-only"><ButtonLink kind="main" small to={`/clients/${client}/trip`}>{t('rdyEnterTrip')}</ButtonLink></p></Doing></section>
    );
  }
  return (
    <section aria-labelledby="trip">
      <h2 id="trip">{t('rdyTrip')}</h2>
      <p>{whenWords(shown)}</p>
      <ol class="rdy-days">{trip.days.map((day, at) => <li key={at}><b>{day.name || t('rdyDay', { n: at + 1 })}</b>: {dayWords(day)}</li>)}</ol>
      <p class="screen-only"><Link to={`/clients/${client}/trip`}>{t('rdyTripLink')}</Link></p>
    </section>
  );
}

function Cautions({ client, codes }: { client: string; codes: ReadinessShown['cautions'] }) {
  if (codes.length === 0) return null;
  return (
    <section aria-labelledby="cautions">
      <h2 id="cautions">{t('rdyCautions')}</h2>
      <ul class="facts">{codes.map((code) => <li key={code} class={BLOCKING.includes(code) ? 'call' : ''}><Link to={`/clients/${client}${CAUTION_LINKS[code]}`}>{t(`rdyCaution_${code}`)}</Link></li>)}</ul>
    </section>
  );
}

function Body({ client, zone, readiness }: { client: string; zone: string; readiness: Readiness }) {
  const { shown, notes } = readiness;
  return (
    <>
      <div class="rdy-head"><Trip client={client} shown={shown} /><StandingNote note={notes[0]} now={shown} zone={zone} /></div>
      <Cautions client={client} codes={shown.cautions} />
      <section aria-labelledby="items">
        <h2 id="items">{t('rdyTable')}</h2>
        <p>{countWords(shown.items)} {heardWords(shown)}</p>
        <Items client={client} items={shown.items} />
        <p class="note soft">{t('rdyLines')}</p>
      </section>
      <Doing><NoteForm client={client} readiness={readiness} /></Doing>
      <History client={client} notes={notes.slice(1)} zone={zone} />
    </>
  );
}

/** What the trip asks of one person beside what they have shown, and the notes signed on it. Printed, one sheet for a colleague. */
export function ReadinessPage({ params }: { params: Record<string, string> }) {
  const id = params.id ?? '';
  const at = `/clients/${encodeURIComponent(id)}`;
  const client = useResource<Client>(at, id);
  const readiness = useResource<Readiness>(`${at}/readiness`, id);
  const name = client.data?.display_name;
  const failure = readiness.failure ?? client.failure;
  return (
    <main class="readiness-page">
      <h1>{name ? t('rdyTitleOf', { name }) : t('rdyTitle')}</h1>
      {readiness.data && me.value && <p class="soft">{t('rdyAsOf', { practice: me.value.practice.name, date: fullDate(readiness.data.shown.as_of) })}</p>}
      <p class="actions screen-only"><Link to={`/clients/${id}`}>{name ? t('backToPerson', { name }) : t('personTitle')}</Link> <Looking><Button small kind="quiet" onClick={() => print()}>{t('printPage')}</Button></Looking></p>
      <p class="urgent">{t('rdyCaution')}</p>
      <ReadFailure failure={failure} asOf={readiness.asOf} onRetry={() => void Promise.all([client.reload(), readiness.reload()])} />
      {readiness.data && client.data ? <Body client={id} zone={client.data.time_zone} readiness={readiness.data} /> : !failure && <p role="status">{t('loading')}</p>}
    </main>
  );
}
