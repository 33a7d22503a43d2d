import { useEffect } from 'preact/hooks';
import { Button } from '../../shared/form/Button';
import { Walker } from '../../shared/marks/marks';
import { useScreenOn } from '../session/alerts';
import { addRest, endRest, pauseRest, rest, resumeRest } from '../session/rest';
import { clock, secondsLeft, walked } from '../session/timer';
import { t } from '../words';
import { useTicker } from './useTicker';

/** The way walked while resting, in a box of 150 x 44: the walker goes along it. */
const WAY = 'M4 38C30 38 40 24 66 27S110 40 146 30';

function Way({ part }: { part: number }) {
  return (
    <span class="way" aria-hidden="true">
      <svg viewBox="0 0 150 44" preserveAspectRatio="none">
        <path class="ahead" d={WAY} />
        <path class="behind" d={WAY} pathLength={1} stroke-dasharray={`${part} 2`} />
      </svg>
      <span class="on-way" style={{ left: `${part * 100}%` }}>
        <Walker />
      </span>
    </span>
  );
}

/** The seconds stand in the title too: the phone may lie on the floor with another page in front. */
function useTitle(text: string | null): void {
  useEffect(() => {
    if (text === null) return;
    const before = document.title.replace(/^\d+:\d\d · /, '');
    document.title = `${text} · ${before}`;
    return () => {
      document.title = before;
    };
  }, [text]);
}

const Running = () => (
  <>
    <Button small onClick={pauseRest}>{t('pause')}</Button>
    <Button small onClick={addRest}>{t('addRest')}</Button>
  </>
);

const Paused = () => (
  <>
    <Button small onClick={resumeRest}>{t('resume')}</Button>
    <Button small onClick={endRest}>{t('endRest')}</Button>
  </>
);

/** The running rest: by its end, never by counting. Nothing when none runs. */
export function RestBar() {
  const running = rest.value !== null && rest.value.timer.paused_ms === null;
  const at = useTicker(running);
  useScreenOn(running);
  const seconds = rest.value ? secondsLeft(rest.value.timer, at) : null;
  useTitle(seconds === null ? null : clock(seconds));
  if (!rest.value || seconds === null) return null;
  return (
    <div class="rest">
      <span class="count" role="timer" aria-label={t('restLeft', { n: seconds })}>{clock(seconds)}</span>
      <Way part={walked(rest.value.timer, at)} />
      <span class="rest-buttons">
        {running ? <Running /> : <Paused />}
      </span>
    </div>
  );
}
