import { useResource } from '../api/resource';
import type { ScreeningList } from '../api/types';
import { Link } from '../form/Link';
import { t } from '../words';

/** Where a person stands by their newest screening, with the ways to screening, tests, load and readiness. */
export function Standing({ client }: { client: string }) {
  const { data } = useResource<ScreeningList>(`/clients/${encodeURIComponent(client)}/screenings`, client);
  const isOpen = data?.state === 'clearance_required' || data?.state === 'not_screened';
  return (
    <nav class="standing screen-only" aria-label={t('standingNav')}>
      {data && <p class={isOpen ? 'call' : 'soft'}>{t(`scrState_${data.state}`)}</p>}
      <p class="actions">
        <Link class="btn small quiet" to={`/clients/${client}/screening`}>{t('scrTitle')}</Link>
        <Link class="btn small quiet" to={`/clients/${client}/tests`}>{t('tstTitle')}</Link>
        <Link class="btn small quiet" to={`/clients/${client}/load`}>{t('loadTitle')}</Link>
        <Link class="btn small quiet" to={`/clients/${client}/trip`}>{t('trpTitle')}</Link>
        <Link class="btn small quiet" to={`/clients/${client}/readiness`}>{t('rdyTitle')}</Link>
      </p>
    </nav>
  );
}
