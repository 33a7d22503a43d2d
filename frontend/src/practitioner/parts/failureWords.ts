import type { Failure } from '../api/request';
import { t } from '../words';
import { problemWords } from './problemWords';

/** What went wrong, and what became of what was typed. */
export function failureWords(failure: Failure): string {
  if (failure.kind === 'network') return t('failNetwork');
  if (failure.kind === 'signed_out') return t('failSignedOut');
  if (failure.retryAfterS !== null) return t('failRate', { n: failure.retryAfterS });
  const own = problemWords(failure.problem.code);
  if (own) return own;
  if (failure.problem.status === 404) return t('failGone');
  if (failure.problem.status === 412) return t('failStale');
  return t('failServer', { detail: failure.problem.detail ?? failure.problem.title });
}
