import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { t } from '../words';
import { Screen } from './Screen';

type Page = ComponentType<{ params: Record<string, string> }>;

/**
 * A page that is not needed to begin a session: its code is a file of its own, already kept on the phone by the service worker.
 * Loaded once, then at hand like any other.
 */
export function later(load: () => Promise<Page>): Page {
  let known: Page | null = null;
  return function Later(props) {
    const [page, setPage] = useState<Page | 'failed' | null>(() => known);
    useEffect(() => {
      if (known) return;
      load().then(
        (loaded) => {
          known = loaded;
          setPage(() => loaded);
        },
        () => setPage('failed'),
      );
    }, []);
    if (page === 'failed') return <Failed />;
    const Loaded = page;
    return Loaded && <Loaded {...props} />;
  };
}

/** The file is neither on the phone nor to be had: the app was opened for the first time a moment ago, or is older than the server. */
function Failed() {
  return (
    <Screen title={t('pageFailed')} tabs>
      <p>{t('pageFailedText')}</p>
      <button type="button" class="btn" onClick={() => location.reload()}>{t('reload')}</button>
    </Screen>
  );
}
