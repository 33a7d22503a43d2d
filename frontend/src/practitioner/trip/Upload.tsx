import { useRef, useState } from 'preact/hooks';
import { unitOf } from '../../shared/units';
import { readRoute } from '../api/calls';
import type { RouteReading } from '../api/types';
import { Button } from '../form/Button';
import { Choices } from '../form/Choices';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { Input } from '../form/bare';
import { FailureLine } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';
import { cutOf } from './form';

/** As the server takes it; what is larger is refused here, before it is sent. */
const MOST_BYTES = 64_000_000;
type How = 'file' | 'days' | 'places';

interface Props { client: string; onRead: (reading: RouteReading) => void }

function useReading({ client, onRead }: Props) {
  const { busy, failure, setFailure, run } = useWrite();
  const [wrong, setWrong] = useState<string | null>(null);
  const read = async (file: File | undefined, cut: string | null) => {
    setFailure(null);
    setWrong(!file ? t('trpFileMissing') : file.size > MOST_BYTES ? t('trpFileLarge') : cut === null ? t('trpCutOdd') : null);
    if (!file || file.size > MOST_BYTES || cut === null) return;
    const found = await run(() => readRoute(client, file, cut));
    if (found) onRead(found);
  };
  return { busy, failure, wrong, read };
}

/** A GPX file, picked or dropped, and how it is cut into days. Nothing is saved here. */
export function Upload(props: Props) {
  const input = useRef<HTMLInputElement>(null);
  const [how, setHow] = useState<How>('file');
  const [text, setText] = useState('');
  const { busy, failure, wrong, read } = useReading(props);
  const drop = (event: DragEvent) => {
    event.preventDefault();
    const files = event.dataTransfer?.files;
    if (input.current && files?.length) input.current.files = files;
  };
  return (
    <Form class="route-drop" onDragOver={(event) => event.preventDefault()} onDrop={drop} onSubmit={(event) => { event.preventDefault(); void read(input.current?.files?.[0], cutOf(how, text)); }}>
      <div class="field">
        <label for="route-file">{t('trpFile')}</label>
        <span class="hint" id="route-hint">{t('trpFileHint')}</span>
        <Input id="route-file" type="file" ref={input} accept=".gpx,.gz,application/gpx+xml" aria-describedby="route-hint" />
      </div>
      <Choices<How> legend={t('trpCut')} options={(['file', 'days', 'places'] as const).map((value) => ({ value, label: t(`trpCut_${value}`) }))} value={how} onChange={setHow} />
      {how === 'days' && <Field label={t('trpCutDays')} hint={t('trpCutDaysHint')} inputMode="numeric" value={text} onInput={setText} />}
      {how === 'places' && <Field label={t('trpCutPlaces')} hint={t('trpCutPlacesHint')} unit={unitOf('distance')} value={text} onInput={setText} />}
      <p><Button type="submit">{busy ? t('trpReading') : t('trpRead')}</Button> <span role="status">{busy && t('trpReadingLong')}</span></p>
      <div role="alert">{wrong && <p class="error">{wrong}</p>}</div>
      <FailureLine failure={failure} />
    </Form>
  );
}
