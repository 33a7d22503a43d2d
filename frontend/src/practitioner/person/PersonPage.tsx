import { useEffect, useRef } from 'preact/hooks';
import { dayShort, today } from '../../shared/dates';
import { useResource } from '../api/resource';
import type { Overview } from '../api/types';
import { Button, ButtonLink } from '../form/Button';
import { Link } from '../form/Link';
import { Pairings } from '../caseload/Pairings';
import { tripWords } from '../caseload/sentences';
import { moment } from '../parts/heard';
import { Season } from '../parts/Season';
import { ReadFailure, say } from '../parts/status';
import { t } from '../words';
import { About, Adherence } from './About';
import { Aside } from './Aside';
import { Flags } from './Flags';
import { PauseLink } from '../season/PauseLink';
import { Doing } from '../rights/Needs';
import { Standing } from '../screening/Standing';
import { PrintProgram } from '../sheets/PrintProgram';
import { Strip } from './Strip';
import { Suggestions } from './suggestions/Suggestions';
import { Timeline } from './Timeline';
import { Versions } from './Versions';
import { Messages, Notes } from './Words';

function headWords({ client, program, goal, phone_number, heard_until }: Overview): string[] {
  const zone = client.time_zone;
  const behind = program && phone_number !== null && phone_number < program.number;
  return [
    client.age === null ? '' : t('headAge', { n: client.age }),
    tripWords(goal),
    program ? t('headProgram', { number: program.number, date: dayShort(today(new Date(program.published_at), zone)) }) : t('headNoProgram'),
    behind ? t('headPhoneBehind', { number: phone_number }) : '',
    heard_until ? t('headHeard', { time: moment(heard_until, zone) }) : t('headNotHeard'),
  ].filter(Boolean);
}

/** Says that the phone was heard while the page lay open: the page changes by itself, and that must not pass unheard. */
function useNews(overview: Overview | null): void {
  const heard = useRef<string | null>(null);
  useEffect(() => {
    const now = overview?.heard_until ?? null;
    if (heard.current !== null && now !== null && now !== heard.current) say(t('updatedNow'));
    heard.current = now ?? heard.current;
  }, [overview?.heard_until]);
}

function Body({ overview, now }: { overview: Overview; now: Date }) {
  const { id, time_zone } = overview.client;
  const hasDays = overview.days.length > 0 || overview.pain.length > 0;
  // What needs a person now comes before what could be more.
  const hasOpen = overview.flags.some(({ status }) => status === 'open');
  return (
    <div class="two">
      <div class="seen">
        {overview.ridge.weeks.length > 0 && <section aria-label={t('seasonTitle')}><Season ridge={overview.ridge} now={now} heardAt={overview.heard_until} zone={time_zone} /></section>}
        <section aria-labelledby="strip"><h2 id="strip">{t('stripTitle')}</h2>{hasDays ? <Strip overview={overview} now={now} /> : <p class="soft">{t('stripEmpty')}</p>}</section>
      </div>
      <div class="side">
        <Standing client={id} />
        {!hasOpen && <Suggestions client={id} />}
        <Flags client={id} flags={overview.flags} />
        <Doing><PauseLink overview={overview} /></Doing>
        {hasOpen && <Suggestions client={id} />}
        <Aside client={id} zone={time_zone} />
        <Messages overview={overview} />
        <About overview={overview} />
      </div>
      <div class="more">
        <Adherence overview={overview} />
        <Notes overview={overview} />
        <Versions client={id} />
        <Timeline overview={overview} />
      </div>
    </div>
  );
}

/** One person whole. */
export function PersonPage({ params }: { params: Record<string, string> }) {
  const id = params.id ?? '';
  const { data, asOf, failure, reload } = useResource<Overview>(`/clients/${encodeURIComponent(id)}/overview`, id);
  useNews(data);
  const missing = failure?.kind === 'problem' && failure.problem.status === 404;
  return (
    <main class="person-page">
      <div class="person-head">
        <h1>{data?.client.display_name ?? t(missing ? 'personMissingTitle' : 'personLoading')}</h1>
        {data && <p class="soft">{headWords(data).join(' · ')}</p>}
        <span class="spacer" />
        {data && <div class="screen-only actions"><ButtonLink small to={`/clients/${id}/program`}>{t('programLink')}</ButtonLink> <ButtonLink small to={`/clients/${id}/season`}>{t('seaTitle')}</ButtonLink> {data.program && <PrintProgram client={data.client} />} <Button small kind="quiet" onClick={() => print()}>{t('printPage')}</Button></div>}
      </div>
      {missing
        ? <><p role="alert">{t('personMissing')}</p><p><Link to="/clients">{t('clientsTitle')}</Link></p></>
        : <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} />}
      {data?.client.archived_at && <p class="banner">{t('archivedBanner')}</p>}
      <Pairings client={id} />
      {data && asOf && <Body overview={data} now={asOf} />}
    </main>
  );
}
