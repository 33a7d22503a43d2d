import { dayShort } from '../../shared/dates';
import { localeTag } from '../../shared/words/mechanism';
import { useResource } from '../api/resource';
import type { Client, Load } from '../api/types';
import { Link } from '../form/Link';
import { ReadFailure } from '../parts/status';
import { Citation } from '../sources/Citation';
import { t } from '../words';

const shown = (value: number, digits: number): string => new Intl.NumberFormat(localeTag(), { maximumFractionDigits: digits }).format(value);
/** Loads are whole as a person reads them; monotony is a ratio near 1. Digits shown. */
const MONOTONY_DIGITS = 2;

const BAR_PX = 24;
const GAP_PX = 8;
const HIGH_PX = 130;

function Bars({ weekly }: Pick<Load, 'weekly'>) {
  const most = Math.max(1, ...weekly.map(({ load }) => load));
  const width = Math.max(1, weekly.length) * (BAR_PX + GAP_PX);
  return (
    <svg class="load-bars" viewBox={`0 0 ${width} ${HIGH_PX + 2}`} preserveAspectRatio="none" role="img" aria-label={t('loadBars')}>
      {weekly.map(({ starts_on, load }, i) => {
        const high = (load / most) * HIGH_PX;
        return <rect key={starts_on} x={i * (BAR_PX + GAP_PX)} y={HIGH_PX - high} width={BAR_PX} height={high} />;
      })}
      <path d={`M0 ${HIGH_PX + 1}H${width}`} />
    </svg>
  );
}

const WeekTable = ({ weekly }: Pick<Load, 'weekly'>) => (
  <table class="plain adherence">
    <thead><tr><th scope="col">{t('loadWeek')}</th><th scope="col">{t('loadValue')}</th></tr></thead>
    <tbody>{[...weekly].reverse().map(({ starts_on, load }) => <tr key={starts_on}><th scope="row">{dayShort(starts_on)}</th><td class="tnum">{shown(load, 0)}</td></tr>)}</tbody>
  </table>
);

function Numbers({ load }: { load: Load }) {
  return (
    <ul class="words">
      {load.words.map(({ code, about, can_tell, cannot_tell, source }) => {
        const value = load[code];
        return (
          <li key={code}>
            <h3><span lang="en">{about}</span>: <span class="tnum">{value === null ? t('loadUnknown') : shown(value, code === 'monotony' ? MONOTONY_DIGITS : 0)}</span></h3>
            <p><b>{t('loadCan')}:</b> <span lang="en">{can_tell}</span></p>
            <p><b>{t('loadCannot')}:</b> <span lang="en">{cannot_tell}</span></p>
            <Citation code={source} />
          </li>
        );
      })}
    </ul>
  );
}

function Body({ load }: { load: Load }) {
  if (!load.through || load.days.length === 0) return <p class="soft">{t('loadNone')}</p>;
  return (
    <>
      <p>{t('loadThrough', { day: dayShort(load.through) })}</p>
      <p class="urgent" lang="en">{load.caution}</p>
      <section aria-labelledby="weekly"><h2 id="weekly">{t('loadWeekly')}</h2><Bars weekly={load.weekly} /><WeekTable weekly={load.weekly} /></section>
      <section aria-labelledby="numbers"><h2 id="numbers">{t('sourcesNumbers')}</h2>{load.weekly_load === null && <p>{t('loadFew')}</p>}<Numbers load={load} /></section>
    </>
  );
}

/** Load of one person by week, and what each number can and cannot tell. */
export function LoadPage({ params }: { params: Record<string, string> }) {
  const id = params.id ?? '';
  const at = `/clients/${encodeURIComponent(id)}`;
  const client = useResource<Client>(at, id);
  const load = useResource<Load>(`${at}/load`, id);
  const name = client.data?.display_name;
  return (
    <main class="form-page">
      <h1>{name ? t('loadTitleOf', { name }) : t('loadTitle')}</h1>
      <p><Link to={`/clients/${id}`}>{name ? t('backToPerson', { name }) : t('personTitle')}</Link></p>
      <ReadFailure failure={load.failure ?? client.failure} asOf={load.asOf} onRetry={() => void Promise.all([client.reload(), load.reload()])} />
      {load.data ? <Body load={load.data} /> : !load.failure && <p role="status">{t('loading')}</p>}
    </main>
  );
}
