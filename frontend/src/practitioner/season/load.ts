/** Everything that the season's page needs before it can show anything, asked for at once. */
import { readClient, readCurrent, readDraft, readTemplates } from '../editor/calls';
import { readStart } from './calls';
import { Desk } from './desk';

/** @throws RequestFailed */
export async function loadDesk(id: string): Promise<Desk> {
  const [client, start, current, draft, templates] = await Promise.all([readClient(id), readStart(id), readCurrent(id), readDraft(id), readTemplates()]);
  const program = {
    client: client.data,
    content: draft?.data.content ?? current?.data.content ?? null,
    base: draft ? draft.data.base_number : (current?.data.number ?? null),
    etag: draft?.etag ?? null,
    templates: templates.data.items,
  };
  return new Desk(program, start);
}
