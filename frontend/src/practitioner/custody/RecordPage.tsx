import { useState } from 'preact/hooks';
import { dayShort, today } from '../../shared/dates';
import { navigate } from '../../shared/router';
import { language } from '../../shared/words/mechanism';
import { refreshAbout, useResource } from '../api/resource';
import type { Client } from '../api/types';
import { Button, ButtonLink } from '../form/Button';
import { Choices } from '../form/Choices';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { Link } from '../form/Link';
import { FailureLine, ReadFailure, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { useMaking } from '../sheets/useMaking';
import { Doing, Looking, Owning, useMay } from '../rights/Needs';
import { t } from '../words';
import { forgetPerson } from './forget';
import { eraseClient, exportRecord, keepClient, type ErasureState, type When } from './calls';
import { c } from './words';

const dayOf = (at: string): string => dayShort(today(new Date(at)));

function Export({ client }: { client: Client }) {
  const { busy, failure, made, make } = useMaking();
  return (
    <section>
      <h2>{c('exportTitle')}</h2>
      <p>{c('exportText')}</p>
      <Looking><p><Button small kind="main" onClick={() => void (busy || make(() => exportRecord(client.id, language.value)))}>{c('exportButton')}</Button></p></Looking>
      <p role="status">{busy ? c('exporting') : made && c('exported', { name: made.name })}</p>
      <FailureLine failure={failure} />
    </section>
  );
}

const GOES = [['goEntries', 'entries'], ['goPrograms', 'programs'], ['goTests', 'tests'], ['goScreenings', 'screenings'], ['goMessages', 'messages'], ['goNotes', 'notes'], ['goPhones', 'phones']] as const;

const WhatGoes = ({ state }: { state: ErasureState }) => (
  <>
    <h3>{c('eraseGoes')}</h3>
    <ul class="facts">{GOES.map(([key, field]) => <li key={key}>{c(key, { n: state[field] })}</li>)}</ul>
    <h3>{c('eraseStays')}</h3>
    <ul class="facts"><li>{c('stayLog', { n: state.log_rows_kept })}</li><li>{c('stayBackups')}</li><li>{c('stayPaper')}</li></ul>
  </>
);

const plain = (name: string): string => name.normalize('NFC').toLowerCase().split(/\s+/).filter(Boolean).join(' ');

function EraseForm({ client, state, onDone }: { client: Client; state: ErasureState; onDone: () => void }) {
  const name = client.display_name;
  const [when, setWhen] = useState<When>('later');
  const [typed, setTyped] = useState('');
  const [differs, setDiffers] = useState(false);
  const { busy, failure, run } = useWrite();
  const erase = async (event: Event) => {
    event.preventDefault();
    setDiffers(plain(typed) !== plain(name));
    if (plain(typed) !== plain(name)) return document.getElementsByName('confirm-name')[0]?.focus();
    const done = await run(() => eraseClient(client.id, typed, when));
    if (!done) return;
    say(done.asked ? c('erasedLater', { name, date: dayOf(done.asked.due_at) }) : c('erasedNow', { name }));
    if (done.asked) return onDone();
    forgetPerson(client.id);
    navigate('/clients', { replace: true });
  };
  return (
    <Form onSubmit={(event) => void erase(event)} noValidate>
      <Choices legend={c('eraseWhen')} value={when} onChange={setWhen}
        options={[{ value: 'later', label: c('eraseLater', { days: state.undo_days }) }, { value: 'now', label: c('eraseNow') }]} />
      <Field name="confirm-name" label={c('eraseType', { name })} value={typed} onInput={setTyped} autoComplete="off" error={differs ? c('eraseDiffers') : null} />
      <FailureLine failure={failure} />
      <p><Button small type="submit">{busy ? c('erasing') : c('eraseButton')}</Button></p>
    </Form>
  );
}

function Asked({ client, due, onDone }: { client: Client; due: string; onDone: () => void }) {
  const { busy, failure, run } = useWrite();
  const keep = async () => {
    if (!(await run(async () => (await keepClient(client.id), true)))) return;
    say(c('eraseKept', { name: client.display_name }));
    onDone();
  };
  return (
    <>
      <p class="banner">{c('eraseAsked', { date: dayOf(due) })} <Button small onClick={() => void (busy || keep())}>{c('eraseBack')}</Button></p>
      <FailureLine failure={failure} />
    </>
  );
}

/** For an owner; others read only that it was asked for. */
function Erase({ client, state, onDone }: { client: Client; state: ErasureState; onDone: () => void }) {
  if (!useMay() && !state.asked) return null;
  return (
    <section aria-labelledby="erase">
      <h2 id="erase">{c('eraseTitle')}</h2>
      {state.asked && <Asked client={client} due={state.asked.due_at} onDone={onDone} />}
      <Doing>
        <p class="banner">{c('eraseLaw')}</p>
        <WhatGoes state={state} />
        <p><b>{c('eraseFirst')}</b></p>
        <EraseForm client={client} state={state} onDone={onDone} />
      </Doing>
    </section>
  );
}

/** One person's record as a whole: who saw it, a copy of it, its end. */
export function RecordPage({ params }: { params: Record<string, string> }) {
  const id = params.id ?? '';
  const at = `/clients/${encodeURIComponent(id)}`;
  const client = useResource<Client>(at, id);
  const state = useResource<ErasureState>(`${at}/erasure`, id);
  const name = client.data?.display_name;
  return (
    <main class="form-page">
      <h1>{name ? c('recordTitleOf', { name }) : c('recordTitle')}</h1>
      <p class="actions">{name && <Link to={`/clients/${id}`}>{t('backToPerson', { name })}</Link>} <ButtonLink small to={`/practice/audit?client_id=${id}`}>{c('whoSaw')}</ButtonLink></p>
      <ReadFailure failure={client.failure ?? state.failure} asOf={client.asOf} onRetry={() => void Promise.all([client.reload(), state.reload()])} />
      {!client.data && !client.failure && <p role="status">{t('loading')}</p>}
      {client.data && <Export client={client.data} />}
      {client.data && state.data && <Owning><Erase client={client.data} state={state.data} onDone={() => void refreshAbout(id)} /></Owning>}
    </main>
  );
}
