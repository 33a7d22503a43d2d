import { useState } from 'preact/hooks';
import { failureFrom, type Failure } from '../api/request';

/** Runs one write at a time and keeps what went wrong; answers undefined then, and when one is already under way. */
export function useWrite() {
  const [busy, setBusy] = useState(false);
  const [failure, setFailure] = useState<Failure | null>(null);
  async function run<T>(write: () => Promise<T>): Promise<T | undefined> {
    if (busy) return undefined;
    setBusy(true);
    setFailure(null);
    try {
      return await write();
    } catch (error) {
      setFailure(failureFrom(error));
      return undefined;
    } finally {
      setBusy(false);
    }
  }
  return { busy, failure, setFailure, run };
}
