import { useId, useState } from 'preact/hooks';
import { today } from '../../../shared/dates';
import { toShown } from '../../../shared/units';
import { t } from '../../words';
import { readWalkFile, WalkUnreadable, type Fault, type WalkRead } from '../../walkfile/readGpx';
import type { Typed } from './walk';

/** The read numbers as they would be typed; what the file does not say is left as it is. */
export function typedFromFile(walk: WalkRead): Partial<Typed> {
  const text: Partial<Typed> = { distance: String(toShown('distance', walk.distance_km)) };
  if (walk.ascent_m !== null && walk.descent_m !== null) Object.assign(text, { ascent: String(toShown('height', walk.ascent_m)), descent: String(toShown('height', walk.descent_m)) });
  if (walk.minutes !== null) text.minutes = String(walk.minutes);
  if (walk.startedAt) text.day = today(walk.startedAt);
  return text;
}

/** A walk recorded elsewhere, read on this phone: it fills in the form, which the person looks over and saves. */
export function WalkFile({ onRead }: { onRead: (typed: Partial<Typed>) => void }) {
  const id = useId();
  const [said, setSaid] = useState<'read' | Fault | null>(null);
  const take = async (file: File | undefined) => {
    if (!file) return;
    try {
      onRead(typedFromFile(await readWalkFile(file)));
      setSaid('read');
    } catch (error) {
      setSaid(error instanceof WalkUnreadable ? error.fault : 'not_gpx');
    }
  };
  return (
    <div class="field">
      <label for={id}>{t('walkFile')}</label>
      <span class="hint" id={`${id}-hint`}>{t('walkFileHint')}</span>
      <input id={id} type="file" accept=".gpx,application/gpx+xml" aria-describedby={`${id}-hint`} onChange={(event) => void take(event.currentTarget.files?.[0])} />
      <p role="status" class={said && said !== 'read' ? 'error' : 'note'}>{said && t(`walkFile_${said}`)}</p>
    </div>
  );
}
