/** Showing again that it is oneself, for what a borrowed desk must not do. One dialog of the frame asks for all pages. */
import { signal } from '@preact/signals';
import { failureFrom, isProblem, RequestFailed } from './request';

/** Who waits for an answer; null when nothing is asked. */
export const asking = signal<{ answer: (confirmed: boolean) => void } | null>(null);

function isAskedFor(error: unknown): boolean {
  if (!(error instanceof RequestFailed)) return false;
  return isProblem(failureFrom(error), 'confirm-first');
}

const ask = (): Promise<boolean> =>
  new Promise((resolve) => {
    asking.value = {
      answer: (confirmed) => {
        asking.value = null;
        resolve(confirmed);
      },
    };
  });

/**
 * Run a write that the server wants confirmed: ask the person where it does, and run it again.
 * @throws RequestFailed whatever the write throws; `confirm-first` when the person would not.
 */
export async function confirmed<T>(write: () => Promise<T>): Promise<T> {
  try {
    return await write();
  } catch (error) {
    if (!isAskedFor(error) || !(await ask())) throw error;
    return write();
  }
}
