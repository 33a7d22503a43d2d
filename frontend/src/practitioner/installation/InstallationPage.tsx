import type { ComponentChildren } from 'preact';
import { dayAndTime, fullDate, today } from '../../shared/dates';
import { useResource } from '../api/resource';
import { me } from '../api/session';
import type { Installation } from '../api/types';
import { ReadFailure } from '../parts/status';
import { t } from '../words';
import { bytes } from './bytes';
import './installation.css';
import { Link } from '../form/Link';

const at = (time: string): string => dayAndTime(time, me.value?.practice.time_zone);

const Row = ({ what, children }: { what: string; children: ComponentChildren }) => <tr><th scope="row">{what}</th><td>{children}</td></tr>;

function Notices({ notices }: Pick<Installation, 'notices'>) {
  if (notices.length === 0) return <p>{t('insWell')}</p>;
  return (
    <section aria-labelledby="todo">
      <h2 id="todo">{t('insTodo')}</h2>
      <ul class="words">
        {notices.map(({ code, urgent }) => (
          <li key={code}>
            <p class={urgent ? 'urgent' : undefined}><b>{urgent ? t('insNow') : t('insSoon')}:</b> {t(`ins_${code}`)}</p>
            <p>{t(`insDo_${code}`)}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Backups({ backup }: Pick<Installation, 'backup'>) {
  const { made_at, verified_at, size_bytes, tried_at, problem } = backup;
  return (
    <section aria-labelledby="backups">
      <h2 id="backups">{t('insBackups')}</h2>
      <table class="plain"><tbody>
        <Row what={t('insMade')}>{made_at ? at(made_at) : t('insNever')}</Row>
        {made_at && <Row what={t('insVerified')}>{verified_at ? at(verified_at) : t('insUnverified')}</Row>}
        {size_bytes !== null && <Row what={t('insSize')}>{bytes(size_bytes)}</Row>}
        {problem && tried_at && <Row what={t('insTried')}>{at(tried_at)}</Row>}
        {problem && <Row what={t('insProblem')}><span lang="en">{problem}</span></Row>}
      </tbody></table>
      <p class="note soft">{t('insElsewhere')}</p>
    </section>
  );
}

const waitingWords: Record<string, () => string> = {
  kept_aside: () => t('insWaiting_kept_aside'), not_looked_at: () => t('insWaiting_not_looked_at'),
};

function Phones({ phones, waiting }: Pick<Installation, 'phones' | 'waiting'>) {
  const { clients, silent, silent_days: days } = phones;
  return (
    <section aria-labelledby="phones">
      <h2 id="phones">{t('insPhones')}</h2>
      {clients === 0 ? <p>{t('insNoPhones')}</p> : <p>{t('insHeard', { n: clients })} {silent === 0 ? t('insAllHeard', { days }) : t('insSilent', { n: silent, days })}</p>}
      {silent > 0 && <p><Link to="/">{t('insToCaseload')}</Link></p>}
      <table class="plain"><tbody>
        {waiting.map(({ name, number, oldest_at }) => (
          <Row key={name} what={waitingWords[name]?.() ?? t('insWaiting', { name })}>
            {number === 0 || !oldest_at ? t('insNothingWaits') : t('insWaits', { n: number, time: at(oldest_at) })}
          </Row>
        ))}
      </tbody></table>
    </section>
  );
}

const certificate = ({ url, looked_at, certificate_until }: Installation['address']): string => {
  if (!url.startsWith('https:')) return t('insNoHttps');
  if (!looked_at) return t('insNotLooked');
  return certificate_until ? t('insUntil', { date: fullDate(today(new Date(certificate_until))) }) : t('insNoCertificate');
};

function Machine({ version, database, disk, address }: Installation) {
  return (
    <section aria-labelledby="machine">
      <h2 id="machine">{t('insMachine')}</h2>
      <table class="plain"><tbody>
        <Row what={t('insVersion')}>{version}</Row>
        <Row what={t('insDatabase')}>{t('insDatabaseSize', { kind: t(`insKind_${database.kind}`), size: bytes(database.size_bytes) })}</Row>
        <Row what={t('insSchema')}>{database.schema_revision}</Row>
        <Row what={t('insDisk')}>{t('insDiskOf', { free: bytes(disk.free_bytes), total: bytes(disk.total_bytes) })}</Row>
        <Row what={t('insAddress')}>{address.url}</Row>
        <Row what={t('insCertificate')}>{certificate(address)}</Row>
      </tbody></table>
    </section>
  );
}

/** For whoever looks after the installation: what runs, whether it is safe, and what to do. */
export function InstallationPage() {
  const { data, asOf, failure, reload } = useResource<Installation>('/practice/status');
  return (
    <main class="form-page installation">
      <h1>{t('insTitle')}</h1>
      <p class="soft">{t('insWhat')} {data && t('insAsOf', { time: at(data.as_of) })}</p>
      <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} />
      {data ? <><Notices {...data} /><Backups {...data} /><Phones {...data} /><Machine {...data} /></> : !failure && <p role="status">{t('loading')}</p>}
    </main>
  );
}
