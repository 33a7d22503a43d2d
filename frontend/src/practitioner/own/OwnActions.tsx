import { failureFrom } from '../api/request';
import { refreshAll } from '../api/resource';
import { Button, ButtonLink } from '../form/Button';
import { failureWords } from '../editor/failure';
import type { Entry } from '../exercises/entry';
import { say } from '../parts/status';
import { archiveOwn } from './calls';
import { o } from './words';

/** Both ways can be undone from the line that says so. */
async function setArchived(entry: Pick<Entry, 'code' | 'name'>, archived: boolean): Promise<void> {
  try {
    await archiveOwn(entry.code, archived);
  } catch (error) {
    say(failureWords(failureFrom(error)));
    return;
  }
  refreshAll();
  say(o(archived ? 'archivedSaid' : 'restoredSaid', { name: entry.name }), () => void setArchived(entry, !archived));
}

/** What can be done with an exercise of the practice's own. */
export function OwnActions({ entry }: { entry: Entry }) {
  const archived = entry.own?.archived ?? false;
  return (
    <div class="ed-row">
      <ButtonLink small to={`/exercises/own/${entry.code}`}>{o('change')}</ButtonLink>
      <Button small onClick={() => void setArchived(entry, !archived)}>{o(archived ? 'restore' : 'archive')}</Button>
      <span class="soft">{archived ? `${o('archivedMark')}. ` : ''}{o('archiveText')}</span>
    </div>
  );
}
