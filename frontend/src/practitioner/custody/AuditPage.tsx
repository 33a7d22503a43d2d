import { useState } from 'preact/hooks';
import { navigate, query } from '../../shared/router';
import { useResource } from '../api/resource';
import { me } from '../api/session';
import { Button } from '../form/Button';
import { Field, Select } from '../form/Field';
import { Link } from '../form/Link';
import { moment } from '../parts/heard';
import { FailureLine, ReadFailure } from '../parts/status';
import { useMaking } from '../sheets/useMaking';
import { t } from '../words';
import { exportLog, type AuditPage as Page, type AuditRow, type ChainState } from './calls';
import { actionWords, c } from './words';

/** What the address chooses by: it can be kept, sent and gone back to. */
const CHOICES = ['practitioner_id', 'client_id', 'day'] as const;
type Choice = (typeof CHOICES)[number];

function chosen(): URLSearchParams {
  const found = new URLSearchParams();
  for (const name of CHOICES) if (query.value.get(name)) found.set(name, query.value.get(name) as string);
  return found;
}

function choose(name: Choice, value: string): void {
  const next = chosen();
  if (value) next.set(name, value);
  else next.delete(name);
  navigate(`/practice/audit${String(next) && `?${next}`}`, { replace: true });
}

function whoWords(row: AuditRow): string {
  if (row.actor_kind === 'phone') return c('whoPhone');
  if (row.actor_kind === 'server') return c('whoServer');
  if (row.actor_kind === 'nobody') return row.actor_name ? c('whoTried', { name: row.actor_name }) : c('whoNobody');
  return row.actor_name ?? c('whoGone');
}

export function whatWords(row: AuditRow): string {
  const refused = row.outcome === 'done' ? '' : c(`refused_${row.outcome}`);
  const times = row.times > 1 ? c('times', { n: row.times }) : '';
  return [actionWords(row.action), refused, times].filter(Boolean).join(' · ');
}

const About = ({ row }: { row: AuditRow }) => {
  if (row.subject_name) return <Link to={`/clients/${row.subject_id}`}>{row.subject_name}</Link>;
  return <>{row.subject_id && row.outcome !== 'not_found' ? c('filterErased') : ''}</>;
};

function Rows({ items, zone }: { items: readonly AuditRow[]; zone: string }) {
  return (
    <div class="table-scroll" role="region" aria-label={c('rowsTable')} tabIndex={0}>
      <table class="plain">
        <thead><tr>{[c('colWhen'), c('colWho'), c('colWhat'), c('colWhom')].map((name) => <th key={name} scope="col">{name}</th>)}</tr></thead>
        <tbody>
          {items.map((row) => (
            <tr key={row.number}><td class="tnum">{moment(row.at, zone)}</td><td>{whoWords(row)}</td><td>{whatWords(row)}</td><td><About row={row} /></td></tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Filters({ data }: { data: Page }) {
  const now = chosen();
  const clients = [{ value: '', label: c('filterAll') }, ...data.clients.map(({ id, name }) => ({ value: id, label: name }))];
  const client = now.get('client_id') ?? '';
  if (!clients.some(({ value }) => value === client)) clients.push({ value: client, label: c('filterErased') });
  return (
    <div class="actions">
      <Select label={c('filterWho')} value={now.get('practitioner_id') ?? ''} onChange={(to) => choose('practitioner_id', to)}
        options={[{ value: '', label: c('filterAnyone') }, ...data.practitioners.map(({ id, name }) => ({ value: id, label: name }))]} />
      <Select label={c('filterClient')} value={client} onChange={(to) => choose('client_id', to)} options={clients} />
      <Field label={c('filterDay')} type="date" value={now.get('day') ?? ''} onInput={(to) => choose('day', to)} />
      {String(now) && <Button small onClick={() => navigate('/practice/audit', { replace: true })}>{c('filterClear')}</Button>}
    </div>
  );
}

function Files({ choice }: { choice: string }) {
  const { busy, failure, made, make } = useMaking();
  return (
    <section>
      <h2>{c('filesTitle')}</h2>
      <p class="actions">
        <Button small onClick={() => void make(() => exportLog('csv', choice))}>{c('fileTable')}</Button>
        <Button small onClick={() => void make(() => exportLog('jsonl', ''))}>{c('fileChain')}</Button>
      </p>
      <p class="note">{c('fileChainText')}</p>
      <p role="status">{busy ? c('exporting') : made && c('exported', { name: made.name })}</p>
      <FailureLine failure={failure} />
    </section>
  );
}

function Chain() {
  const { data, failure, asOf, reload } = useResource<ChainState>('/audit/chain');
  return (
    <section>
      <h2>{c('chainTitle')}</h2>
      <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} />
      {!data && !failure && <p role="status">{t('loading')}</p>}
      {data?.whole === false && <p class="banner" role="alert">{c('chainBroken', { number: String(data.broken_at) })}</p>}
      {data?.whole && <><p>{c('chainWhole', { n: data.rows })}</p><p class="note">{c('chainHead')} <code class="head-digest">{data.head}</code></p></>}
    </section>
  );
}

/** The log of the practice: who saw which client, who changed what, sign-ins, refusals. */
export function AuditPage() {
  const choice = String(chosen());
  return <Shown key={choice} choice={choice} />;
}

function Shown({ choice }: { choice: string }) {
  const [below, setBelow] = useState<number | null>(null);
  const asked = [choice, below !== null && `below=${below}`].filter(Boolean).join('&');
  const { data, asOf, failure, reload } = useResource<Page>(`/audit${asked && `?${asked}`}`);
  const name = data?.clients.find(({ id }) => id === chosen().get('client_id'))?.name;
  return (
    <main class="audit-page">
      <h1>{c('auditTitle')}</h1>
      {name && <p><Link to={`/clients/${chosen().get('client_id')}`}>{t('backToPerson', { name })}</Link></p>}
      <p class="soft measure">{c('auditText')}</p>
      <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} />
      {!data && !failure && <p role="status">{t('loading')}</p>}
      {data && <Filters data={data} />}
      {data && (data.items.length > 0 ? <Rows items={data.items} zone={me.value?.practice.time_zone ?? 'UTC'} /> : <p>{c('auditNone')}</p>)}
      {data && (
        <p class="actions">
          {below !== null && <Button small onClick={() => setBelow(null)}>{c('newest')}</Button>}
          {data.next !== null && <Button small onClick={() => setBelow(data.next)}>{c('older')}</Button>}
        </p>
      )}
      <Files choice={choice} />
      <Chain />
    </main>
  );
}
