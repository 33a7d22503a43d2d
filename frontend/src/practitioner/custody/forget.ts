/** After an erasure nothing of the person is left in this page either: neither what was read nor what was typed. */
import { forgetDraftsOf } from '../api/drafts';
import { forgetAbout } from '../api/resource';

export function forgetPerson(client: string): void {
  forgetAbout(client);
  forgetDraftsOf(client);
}
