import { useEffect, useId, useState } from 'preact/hooks';
import { today } from '../../../shared/dates';
import { toShown } from '../../../shared/units';
import { t } from '../../words';
import { query } from '../../../shared/router';
import type { WalkRead } from '../../walkfile/readGpx';
import { readWalk, sharedWaits, takeShared, type Unread } from '../../walkfile/shared';
import type { Typed } from './walk';

/** The read numbers as they would be typed; what the file does not say is left as it is. */
export function typedFromFile(walk: WalkRead): Partial<Typed> {
  const text: Partial<Typed> = { distance: String(toShown('distance', walk.distance_km)) };
  if (walk.ascent_m !== null && walk.descent_m !== null) Object.assign(text, { ascent: String(toShown('height', walk.ascent_m)), descent: String(toShown('height', walk.descent_m)) });
  if (walk.minutes !== null) text.minutes = String(walk.minutes);
  if (walk.startedAt) text.day = today(walk.startedAt);
  return text;
}

/** What is said at first: a share whose file did not arrive names itself in the address. */
const atFirst = () => (query.value.get('share') === 'missed' && !sharedWaits.value ? 'missed' : null);

interface WalkFileProps {
  /** Fulfilled once it is kept. */
  onRead: (typed: Partial<Typed>) => Promise<void>;
  /** Where walks that another app shared go: in by themselves, only when the person asks since the form holds one, or not here. */
  shared: 'comes' | 'asks' | 'never';
}

/** A shared walk that waits while the form holds another one, or while it could not be read. */
const Another = ({ onTake }: { onTake: () => void }) => (
  <p class="note">{t('shareMore')} <button type="button" class="link" onClick={onTake}>{t('shareTake')}</button></p>
);

/** A walk recorded elsewhere, read on this phone: it fills in the form, which the person looks over and saves. */
export function WalkFile({ onRead, shared }: WalkFileProps) {
  const id = useId();
  const [said, setSaid] = useState<'read' | 'missed' | Unread | null>(atFirst);
  const take = async (file: File | undefined) => {
    if (!file) return;
    const read = await readWalk(file);
    if (typeof read === 'object') await onRead(typedFromFile(read));
    setSaid(typeof read === 'object' ? 'read' : read);
  };
  const takeNext = () => takeShared((walk: WalkRead) => onRead({ ...typedFromFile(walk), shared: true })).then(setSaid);
  useEffect(() => {
    if (shared === 'comes' && sharedWaits.value) void takeNext();
  }, []);
  const another = sharedWaits.value && (shared === 'asks' || (shared === 'comes' && said !== null));
  return (
    <div class="field">
      <label for={id}>{t('walkFile')}</label>
      <span class="hint" id={`${id}-hint`}>{t('walkFileHint')}</span>
      <input id={id} type="file" accept=".gpx,application/gpx+xml" aria-describedby={`${id}-hint`} onChange={(event) => void take(event.currentTarget.files?.[0])} />
      <p role="status" class={said && said !== 'read' ? 'error' : 'note'}>{said && t(`walkFile_${said}`)}</p>
      {another && <Another onTake={() => void takeNext()} />}
    </div>
  );
}
