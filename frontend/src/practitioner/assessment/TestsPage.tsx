import { useResource } from '../api/resource';
import type { Client, ClientTests, Items, Test } from '../api/types';
import { Link } from '../form/Link';
import { ReadFailure } from '../parts/status';
import { t } from '../words';
import { Results } from './Results';
import { Scale } from './Scale';
import { TakeTest } from './TakeTest';

/** Tests of one person: taken, read, compared. */
export function TestsPage({ params }: { params: Record<string, string> }) {
  const id = params.id ?? '';
  const at = `/clients/${encodeURIComponent(id)}`;
  const client = useResource<Client>(at, id);
  const tests = useResource<Items<Test>>('/tests');
  const results = useResource<ClientTests>(`${at}/tests`, id);
  const name = client.data?.display_name;
  const failure = client.failure ?? tests.failure ?? results.failure;
  const retry = () => void Promise.all([client.reload(), tests.reload(), results.reload()]);
  return (
    <main class="form-page tests">
      <h1>{name ? t('tstTitleOf', { name }) : t('tstTitle')}</h1>
      <p><Link to={`/clients/${id}`}>{name ? t('backToPerson', { name }) : t('personTitle')}</Link></p>
      <ReadFailure failure={failure} asOf={results.asOf} onRetry={retry} />
      {!(tests.data && results.data) && !failure && <p role="status">{t('loading')}</p>}
      {tests.data && results.data && (
        <>
          <TakeTest client={id} tests={tests.data.items} />
          <Results client={id} items={results.data.items} />
          <Scale client={id} scale={results.data.functional_scale} />
        </>
      )}
    </main>
  );
}
