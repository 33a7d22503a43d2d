import './sheets.css';
import { useState } from 'preact/hooks';
import { Dialog } from '../../shared/Dialog';
import { language, localeTag } from '../../shared/words/mechanism';
import { requestFile } from '../api/request';
import { useResource } from '../api/resource';
import type { Schemas } from '../api/types';
import { Button } from '../form/Button';
import { Choices } from '../form/Choices';
import { Select } from '../form/Field';
import { Form } from '../form/Form';
import { ReadFailure } from '../parts/status';
import { Doing, Looking, Writing } from '../rights/Needs';
import { t } from '../words';
import { Looks, Making } from './Looks';
import { paperFor, requestOf, type ProgramSheet } from './sheet';
import { useMaking } from './useMaking';

type Program = Schemas['ProgramOut'];
interface Person { id: string; display_name: string }

const ALL = '';

function Body({ client, onClose }: { client: Person; onClose: () => void }) {
  const { data, asOf, failure, reload } = useResource<Program>(`/clients/${encodeURIComponent(client.id)}/programs/current`, client.id);
  const [sheet, setSheet] = useState<ProgramSheet>({ session: null, pairing: false, large: false, language: language.value, paper: paperFor(localeTag()) });
  const making = useMaking();
  const make = () => making.make(() => { const { method, path } = requestOf(client.id, sheet); return requestFile(method, path); });
  if (!data) return <>{failure ? <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} /> : <p role="status">{t('loading')}</p>}<div class="foot"><Button small onClick={onClose}>{t('close')}</Button></div></>;
  const sessions = data.content.sessions.filter(({ kind }) => kind !== 'rest');
  return (
    <Form class="sheet-form" onSubmit={(event) => { event.preventDefault(); void make(); }}>
      <p>{t('sheetText')}</p>
      <Select label={t('sheetWhich')} value={sheet.session ?? ALL} onChange={(key) => setSheet({ ...sheet, session: key === ALL ? null : key })}
        options={[{ value: ALL, label: t('sheetAll') }, ...sessions.map(({ key, name }) => ({ value: key, label: name }))]} />
      <Looks look={sheet} onChange={(look) => setSheet({ ...sheet, ...look })} />
      <Writing><Doing><Choices legend={t('sheetCode')} value={sheet.pairing ? 'pair' : 'app'} onChange={(code) => setSheet({ ...sheet, pairing: code === 'pair' })}
        options={[{ value: 'app', label: t('sheetCodeApp') }, { value: 'pair', label: t('sheetCodePair') }]} /></Doing></Writing>
      {sheet.pairing && <p class="note">{t('sheetCodeWarning')}</p>}
      <Making making={making} onClose={onClose} />
    </Form>
  );
}

/** The button and dialog that put a client's program on paper. */
export function PrintProgram({ client }: { client: Person }) {
  const [open, setOpen] = useState(false);
  const close = () => setOpen(false);
  return (
    <Looking>
      <Button small onClick={() => setOpen(true)}>{t('sheetPrint')}</Button>
      <Dialog open={open} title={t('sheetTitle', { name: client.display_name })} onClose={close}>
        <Body client={client} onClose={close} />
      </Dialog>
    </Looking>
  );
}
