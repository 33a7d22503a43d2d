import { useState } from 'preact/hooks';
import { useResource } from '../api/resource';
import type { Sources } from '../api/types';
import { Link } from '../form/Link';
import { ReadFailure } from '../parts/status';
import { t } from '../words';

function Work({ code }: { code: string }) {
  const { data, asOf, failure, reload } = useResource<Sources>('/sources');
  const work = data?.works.find(({ key }) => key === code);
  return (
    <>
      {work && <p>{work.authors} {work.year}, <cite lang="en">{work.title}</cite>, <span lang="en">{work.where}. {work.population}.</span></p>}
      {!data && !failure && <p role="status">{t('loading')}</p>}
      <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} />
      <p><Link to="/sources">{t('sourcesTitle')}</Link></p>
    </>
  );
}

/** The work behind a rule, read when it is asked for. `code` is its key in the bibliography. */
export function Citation({ code }: { code: string }) {
  const [open, setOpen] = useState(false);
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{t(code === 'house' ? 'citeHouse' : 'citeShow')}</summary>
      {open && <Work code={code} />}
    </details>
  );
}
