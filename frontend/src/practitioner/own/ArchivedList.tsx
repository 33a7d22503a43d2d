import './own.css';
import { Link } from '../form/Link';
import type { Entry } from '../exercises/entry';
import { o } from './words';

/** Own exercises that are offered nowhere; nothing where there are none. */
export function ArchivedList({ entries }: { entries: readonly Entry[] }) {
  const archived = entries.filter((entry) => entry.own?.archived);
  if (archived.length === 0) return null;
  return (
    <details class="own-archived">
      <summary>{o('archivedList', { n: archived.length })}</summary>
      <ul class="ed-plain">{archived.map((entry) => <li key={entry.code}><Link to={`/exercises/${entry.code}`}>{entry.name}</Link></li>)}</ul>
    </details>
  );
}
