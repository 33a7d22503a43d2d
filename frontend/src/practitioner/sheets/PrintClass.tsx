import './sheets.css';
import { useState } from 'preact/hooks';
import { Dialog } from '../../shared/Dialog';
import { language, localeTag } from '../../shared/words/mechanism';
import { requestFile } from '../api/request';
import { Button } from '../form/Button';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import type { Entry } from '../exercises/entry';
import { Looking } from '../rights/Needs';
import { t } from '../words';
import { Looks, Making } from './Looks';
import { Picks } from './Picks';
import { paperFor, type Look, type Pick } from './sheet';
import { useMaking } from './useMaking';

interface ClassSheet extends Look {
  title: string;
  about: string;
  movements: readonly Pick[];
}
const TITLE_MAX = 120;

function Body({ sheet, onChange, entries, onClose }: { sheet: ClassSheet; onChange: (sheet: ClassSheet) => void; entries: readonly Entry[]; onClose: () => void }) {
  const [tried, setTried] = useState(false);
  const making = useMaking();
  const title = sheet.title.trim();
  const make = () => {
    setTried(true);
    if (title && sheet.movements.length) void making.make(() => requestFile('POST', '/class-sheets', sheet));
  };
  return (
    <Form class="sheet-form" onSubmit={(event) => { event.preventDefault(); make(); }}>
      <p>{t('classText')}</p>
      <Field label={t('classHeading')} value={sheet.title} onInput={(text) => onChange({ ...sheet, title: text.slice(0, TITLE_MAX) })} error={tried && !title ? t('classHeadingMissing') : null} />
      <Field label={t('classAbout')} hint={t('classAboutHint')} value={sheet.about} onInput={(about) => onChange({ ...sheet, about })} />
      <Picks picks={sheet.movements} entries={entries} error={tried && sheet.movements.length === 0 ? t('classNoneMissing') : null} onChange={(movements) => onChange({ ...sheet, movements })} />
      <Looks look={sheet} onChange={(look) => onChange({ ...sheet, ...look })} />
      <Making making={making} onClose={onClose} />
    </Form>
  );
}

/** The button and dialog that put picked movements on paper for a group. What was picked stays while the page is open. */
export function PrintClass({ entries }: { entries: readonly Entry[] }) {
  const [open, setOpen] = useState(false);
  const [sheet, setSheet] = useState<ClassSheet>({ title: '', about: '', movements: [], large: false, language: language.value, paper: paperFor(localeTag()) });
  const close = () => setOpen(false);
  return (
    <Looking><div>
      <Button small onClick={() => setOpen(true)}>{t('classPrint')}</Button>
      <Dialog open={open} title={t('classTitle')} onClose={close}>
        <Body sheet={sheet} onChange={setSheet} entries={entries} onClose={close} />
      </Dialog>
    </div></Looking>
  );
}
