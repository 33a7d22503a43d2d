import { useEffect, useState } from 'preact/hooks';
import { navigate } from '../../shared/router';
import { updateClient } from '../api/calls';
import { failureFrom, request, type Failure } from '../api/request';
import { refreshAbout } from '../api/resource';
import type { Client } from '../api/types';
import { Button, ButtonLink } from '../form/Button';
import { Form } from '../form/Form';
import { ErrorSummary } from '../parts/ErrorSummary';
import { FailureLine, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { Doing } from '../rights/Needs';
import { t } from '../words';
import { setArchived } from './archive';
import { ClientFieldSet } from './ClientFields';
import { Conflict } from './Conflict';
import { fieldsOf, formErrors, formOf } from './fields';
import { formDraft } from './formDraft';

interface Read { client: Client; etag: string | null }

async function readClient(id: string): Promise<Read> {
  const { data, etag } = await request<Client>('GET', `/clients/${encodeURIComponent(id)}`);
  return { client: data, etag };
}

/** The client as it was when the page was opened: what is typed is compared with that, not with later news. */
function useOnce(id: string) {
  const [read, setRead] = useState<Read | null>(null);
  const [failure, setFailure] = useState<Failure | null>(null);
  useEffect(() => {
    readClient(id).then(setRead, (error: unknown) => setFailure(failureFrom(error)));
  }, [id]);
  return { read, setRead, failure };
}

function useEdit(read: Read) {
  const kept = formDraft(read.client.id);
  const form = kept.read() ?? formOf(read.client);
  const [theirs, setTheirs] = useState<Read | null>(null);
  const { busy, failure, setFailure, run } = useWrite();
  const isStale = failure?.kind === 'problem' && failure.problem.status === 412;
  useEffect(() => {
    if (isStale) readClient(read.client.id).then((found) => (setTheirs(found), setFailure(null)), (error: unknown) => setFailure(failureFrom(error)));
  }, [isStale]);
  const save = async (etag: string | null) => {
    const saved = await run(() => updateClient(read.client.id, fieldsOf(form), etag));
    if (!saved) return;
    kept.drop();
    say(t('saved'));
    void refreshAbout(saved.id);
    navigate(`/clients/${saved.id}`);
  };
  const takeTheirs = () => {
    kept.drop();
    setTheirs(null);
  };
  return { kept, form, theirs, busy, failure: isStale ? null : failure, save, takeTheirs };
}

function Edit({ read, onRead }: { read: Read; onRead: (read: Read) => void }) {
  const { client } = read;
  const { kept, form, theirs, busy, failure, save, takeTheirs } = useEdit(read);
  const [attempt, setAttempt] = useState(0);
  const found = formErrors(form, new Date().getFullYear());
  const errors = attempt > 0 ? found : {};
  const submit = (event: Event) => {
    event.preventDefault();
    setAttempt(attempt + 1);
    if (Object.keys(found).length === 0) void save((theirs ?? read).etag);
  };
  return (
    <Form shows onSubmit={submit} noValidate>
      <ErrorSummary errors={errors} attempt={attempt} />
      {theirs && <Conflict theirs={theirs.client} mine={form} onMine={() => void save(theirs.etag)} onTheirs={() => { onRead(theirs); takeTheirs(); }} />}
      <ClientFieldSet form={form} errors={errors} onChange={kept.keep} />
      <FailureLine failure={failure} />
      <p class="actions"><Button kind="main" small type="submit">{busy ? t('saving') : t('save')}</Button> <ButtonLink small kind="quiet" to={`/clients/${client.id}`}>{t('backToPerson', { name: client.display_name })}</ButtonLink></p>
    </Form>
  );
}

const Archive = ({ client }: { client: Client }) => (
  <section class="apart">
    <p>{client.archived_at ? t('archivedBanner') : t('archiveText')}</p>
    <Button small onClick={() => void setArchived(client, !client.archived_at).then((done) => done && navigate('/'))}>{t(client.archived_at ? 'restore' : 'archive')}</Button>
  </section>
);

export function EditClientPage({ params }: { params: Record<string, string> }) {
  const { read, setRead, failure } = useOnce(params.id ?? '');
  return (
    <main class="form-page">
      <h1>{read ? t('editClientTitle', { name: read.client.display_name }) : t('loading')}</h1>
      <FailureLine failure={failure} />
      {read && <Edit key={read.client.version} read={read} onRead={setRead} />}
      {read && <Doing><Archive client={read.client} /></Doing>}
    </main>
  );
}
