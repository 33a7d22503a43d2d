/** One place where changes that need no answer are said, heard by screen readers too. It exists before its text does. */
import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { time } from '../../shared/dates';
import type { Failure } from '../api/request';
import { me } from '../api/session';
import { Button } from '../form/Button';
import { Looking } from '../rights/Needs';
import { t } from '../words';
import { failureWords } from './failureWords';

interface Said {
  text: string;
  /** Takes back what was just done. */
  undo?: () => void;
}
const said = signal<Said | null>(null);

export function say(text: string, undo?: () => void): void {
  said.value = undo ? { text, undo } : { text };
}
export function unsay(): void {
  said.value = null;
}

export function StatusLine() {
  const now = said.value;
  return (
    <div class="status-line screen-only" role="status">
      {now && (
        <p>
          {now.text}{' '}
          {now.undo && <Button small kind="quiet" onClick={now.undo}>{t('undo')}</Button>}
          <Button small kind="quiet" onClick={unsay}>{t('close')}</Button>
        </p>
      )}
    </div>
  );
}

/** A failure beside the thing that failed. The container is always there, so that the text is spoken when it comes. */
export function FailureLine({ failure, children }: { failure: Failure | null; children?: ComponentChildren }) {
  return <div role="alert">{failure && <p class="error">{failureWords(failure)} {children}</p>}</div>;
}

/** The same for what could not be read: how old what is shown is, and another try. */
export function ReadFailure({ failure, asOf, onRetry }: { failure: Failure | null; asOf: Date | null; onRetry: () => void }) {
  return (
    <div role="alert">
      {failure && (
        <p class="error">
          {failure.kind === 'network' ? t('failNetworkReading') : failureWords(failure)} {asOf && t('staleSince', { time: time(asOf, me.value?.practice.time_zone) })}{' '}
          <Looking><Button small kind="quiet" onClick={onRetry}>{t('tryAgain')}</Button></Looking>
        </p>
      )}
    </div>
  );
}
