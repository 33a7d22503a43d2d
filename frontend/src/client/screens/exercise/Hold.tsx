import { useEffect, useRef, useState } from 'preact/hooks';
import { clearDraft, loadDraft, saveDraft } from '../../../outbox';
import type { Prescription } from '../../../shared/program';
import { Button } from '../../../shared/form/Button';
import { useTicker } from '../../parts/useTicker';
import { prepareSound, soundCount, soundEnd, useScreenOn } from '../../session/alerts';
import { holdAt, holdLength, holdParts, type HoldMoment, type HoldPart } from '../../session/hold';
import { endRest, rest } from '../../session/rest';
import { clock } from '../../session/timer';
import { t } from '../../words';

/** A hold that is running: only its start is kept, all else follows from the time. */
interface Started {
  key: string;
  started_at: number;
}
const DRAFT = 'hold';
/** A hold whose end is longer ago than this was left, not held. House value, ms. */
const FORGOTTEN_MS = 60_000;

function words({ step, side }: HoldPart): string {
  const word = side && t(side);
  if (step === 'change') return t('holdChange', { side: word ?? '' });
  if (step === 'ready') return word ? t('holdReadySide', { side: word }) : t('holdReady');
  return word ? t('holdSide', { side: word }) : t('holdNow');
}

/** Tones at each change, and for the last three seconds before a hold. */
function useTones(moment: HoldMoment | null, running: boolean): void {
  const before = useRef<string | null>(null);
  useEffect(() => {
    const at = !running ? null : moment ? `${moment.index}` : 'over';
    if (before.current !== null && at !== null && at !== before.current) soundEnd();
    before.current = at;
  }, [moment?.index, running]);
  useEffect(() => {
    if (moment && moment.part.step !== 'hold' && moment.seconds_left <= 3) soundCount();
  }, [moment?.index, moment?.seconds_left]);
}

function useStarted(key: string, length_ms: number) {
  const [started, setStarted] = useState<number | null>(null);
  useEffect(() => {
    void loadDraft<Started>(DRAFT)
      .catch(() => undefined)
      .then((kept) => kept?.key === key && Date.now() < kept.started_at + length_ms + FORGOTTEN_MS && setStarted(kept.started_at));
  }, [key]);
  const start = () => {
    prepareSound();
    if (rest.value) endRest(); // who begins to hold has rested
    const started_at = Date.now();
    setStarted(started_at);
    void saveDraft(DRAFT, { key, started_at }).catch(() => undefined); // the hold runs without it; only a reload would lose it
  };
  const stop = () => {
    setStarted(null);
    void clearDraft(DRAFT).catch(() => undefined); // it is forgotten a minute after its end anyway
  };
  return { started, start, stop };
}

/** The timer of a held set: get ready, hold, change sides, hold. It lays nothing by itself. */
export function Hold({ dose, setName }: { dose: Prescription; setName: string }) {
  const parts = holdParts(dose.hold_s ?? 0, dose.sides);
  const { started, start, stop } = useStarted(setName, holdLength(parts) * 1000);
  const now = useTicker(started !== null);
  const moment = started === null ? null : holdAt(parts, Math.max(0, now - started));
  useScreenOn(moment !== null);
  useTones(moment, started !== null);
  return (
    <section class="hold">
      <p class="hold-words" role="status">{started !== null && (moment ? words(moment.part) : t('holdOver'))}</p>
      {moment && (
        <p class="count" role="timer" aria-label={t('holdLeft', { what: words(moment.part), n: moment.seconds_left })}>{clock(moment.seconds_left)}</p>
      )}
      {moment ? <Button wide onClick={stop}>{t('holdStop')}</Button> : <Button wide onClick={start}>{t('holdStart', { n: dose.hold_s ?? 0 })}</Button>}
    </section>
  );
}
