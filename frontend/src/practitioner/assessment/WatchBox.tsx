import { useEffect } from 'preact/hooks';
import { Button } from '../form/Button';
import { t } from '../words';
import { secondsOf, useWatch } from './watch';

/** Where the space key means something else. */
const TAKES_SPACE = 'input, textarea, select, button, a, summary';

function useSpace(toggle: () => void): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const at = event.target as Element;
      if (event.code !== 'Space' || event.repeat || at.closest(TAKES_SPACE) || document.querySelector('dialog[open]')) return;
      event.preventDefault();
      toggle();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  });
}

/** Stop-watch, or the time that is left of a test of fixed length. */
export function WatchBox({ limitS, onStop }: { limitS: number | null; onStop: (seconds: number) => void }) {
  const { running, ms, done, toggle } = useWatch(limitS, onStop);
  useSpace(toggle);
  const seconds = secondsOf(limitS === null ? ms : limitS * 1000 - ms);
  const said = running ? t('tstRunning') : done ? (limitS === null ? t('tstStopped', { seconds }) : seconds <= 0 ? t('tstTimeUp') : '') : '';
  return (
    <div role="group" aria-label={t(limitS === null ? 'tstWatch' : 'tstCounter')}>
      <p class="watch">
        <span>{t(limitS === null ? 'tstWatch' : 'tstCounter')}</span>
        <output aria-live="off">{seconds.toFixed(1)} s</output>
        <Button kind={running ? 'main' : 'other'} onClick={toggle}>{t(running ? 'tstStop' : 'tstStart')}</Button>
        <span class="note soft">{t('tstSpace')}</span>
      </p>
      <p role="status" class="note">{said}</p>
    </div>
  );
}
