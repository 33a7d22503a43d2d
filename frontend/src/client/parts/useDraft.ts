import { useEffect, useRef, useState } from 'preact/hooks';
import { loadDraft, saveDraft } from '../../outbox';

/**
 * A half-filled form that survives the app being closed: loaded once, saved at each change.
 * Answers null while it is being read. A change is kept once its promise is fulfilled.
 */
export function useDraft<T extends object>(name: string, initial: T): [T | null, (part: Partial<T>) => Promise<void>] {
  const [value, setValue] = useState<T | null>(null);
  const newest = useRef<T | null>(null);
  const show = (to: T) => {
    newest.current = to;
    setValue(to);
  };
  useEffect(() => {
    let gone = false;
    void loadDraft<T>(name)
      .catch(() => undefined) // a draft that cannot be read is an empty form, never a page that does not open
      .then((saved) => !gone && show({ ...initial, ...saved }));
    return () => {
      gone = true;
    };
  }, [name]);
  const change = async (part: Partial<T>) => {
    const next = { ...(newest.current ?? initial), ...part };
    show(next);
    await saveDraft(name, next).catch(() => undefined); // what is on the screen stays; saving the form itself will say so
  };
  return [value, change];
}
