import { dayShort, today } from '../../shared/dates';
import { useResource } from '../api/resource';
import type { Client, Items } from '../api/types';
import { Button, ButtonLink } from '../form/Button';
import { Link } from '../form/Link';
import { ReadFailure } from '../parts/status';
import { t } from '../words';
import { setArchived } from './archive';

function One({ client }: { client: Client }) {
  const { id, display_name, archived_at } = client;
  return (
    <li>
      <Link to={`/clients/${id}`}>{display_name}</Link>
      {archived_at && <span class="soft note">{t('archivedSince', { date: dayShort(today(new Date(archived_at))) })}</span>}
      {archived_at && <Button small aria-label={t('restoreName', { name: display_name })} onClick={() => void setArchived(client, false)}>{t('restore')}</Button>}
    </li>
  );
}

function List({ title, clients }: { title: string; clients: readonly Client[] }) {
  if (clients.length === 0) return null;
  return (
    <section>
      <h2>{title}</h2>
      <ul class="people">{clients.map((client) => <One key={client.id} client={client} />)}</ul>
    </section>
  );
}

/** Everyone, those archived too. */
export function ClientsPage() {
  const { data, asOf, failure, reload } = useResource<Items<Client>>('/clients');
  const items = data?.items ?? [];
  return (
    <main>
      <div class="headline"><h1>{t('clientsTitle')}</h1><span class="spacer" /><ButtonLink small to="/clients/new">{t('newClient')}</ButtonLink></div>
      <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} />
      {!data && !failure && <p role="status">{t('loading')}</p>}
      {data && items.length === 0 && <p>{t('clientsEmpty')}</p>}
      <List title={t('clientsActive')} clients={items.filter(({ archived_at }) => !archived_at)} />
      <List title={t('clientsArchived')} clients={items.filter(({ archived_at }) => archived_at)} />
    </main>
  );
}
