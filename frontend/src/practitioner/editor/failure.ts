import type { Failure } from '../api/request';
import { e } from './words';

/** A failure in words: what happened, and that nothing was lost by it. */
export function failureWords(failure: Failure): string {
  if (failure.kind === 'network') return e('failedNetwork');
  if (failure.kind === 'signed_out') return e('failedSignedOut');
  const { problem } = failure;
  const each = (problem.errors ?? []).map((one) => one.detail);
  return [problem.detail ?? problem.title, ...each].join(' ');
}
