import { updateClient } from '../api/calls';
import { refreshAbout } from '../api/resource';
import type { Client } from '../api/types';
import { say } from '../parts/status';
import { failureFrom } from '../api/request';
import { failureWords } from '../parts/failureWords';
import { t } from '../words';

/** Take a client out of the caseload or bring them back; both can be undone from the line that says so. */
export async function setArchived(client: Pick<Client, 'id' | 'display_name'>, archived: boolean): Promise<boolean> {
  try {
    await updateClient(client.id, { archived });
  } catch (error) {
    say(failureWords(failureFrom(error)));
    return false;
  }
  void refreshAbout(client.id);
  say(t(archived ? 'archived' : 'restored', { name: client.display_name }), () => void setArchived(client, !archived));
  return true;
}
