/** The state of one exercise being written: undo and redo, kept in the browser, saved against a colleague's change. */
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { navigate } from '../../shared/router';
import { failureFrom, type Failure } from '../api/request';
import { refreshAll } from '../api/resource';
import * as steps from '../editor/history';
import { say } from '../parts/status';
import { useLeaveWarning } from '../parts/useLeaveWarning';
import { changeOwn, createOwn, readOwn } from './calls';
import { kept, type Kept } from './kept';
import { formOf, type Form } from './model';
import { o } from './words';

export interface Saving {
  busy: boolean;
  failure: Failure | null;
}

export function useOwn(code: string | null, saved: Kept) {
  const place = code ?? 'new';
  const waiting = useRef(kept.read(place));
  const [history, setHistory] = useState(() => steps.begin(waiting.current?.form ?? saved.form));
  const [etag, setEtag] = useState(waiting.current?.etag ?? saved.etag);
  const [keeps, setKeeps] = useState(true);
  const [saving, setSaving] = useState<Saving>({ busy: false, failure: null });
  const form = history.present;
  const dirty = form !== saved.form;
  // Not after the next paint: who closes the page right after a key was pressed would lose it.
  useLayoutEffect(() => {
    if (dirty) setKeeps(kept.keep(place, { form, etag }));
    else kept.clear(place);
  }, [form, etag]);
  useLeaveWarning(dirty);

  const edit = (next: (form: Form) => Form, field: string | null = null) => setHistory((now) => steps.apply(now, next(now.present), field));
  async function save(tag: string | null = etag): Promise<void> {
    if (saving.busy) return;
    setSaving({ busy: true, failure: null });
    try {
      const { data } = code ? await changeOwn(code, form, tag) : await createOwn(form);
      kept.clear(place);
      const undrawn = Object.values(data.findings).filter((found) => found.length > 0).length;
      say(undrawn ? o('savedUndrawn', { name: data.text.name, n: undrawn }) : o('savedSaid', { name: data.text.name }));
      refreshAll();
      navigate(`/exercises/${data.code}`);
    } catch (error) {
      setSaving({ busy: false, failure: failureFrom(error) });
    }
  }
  /** A colleague was faster: save over theirs, or take theirs. */
  async function resolve(mine: boolean): Promise<void> {
    if (!code) return;
    try {
      const theirs = await readOwn(code);
      setEtag(theirs.etag);
      if (mine) return await save(theirs.etag);
      setHistory((now) => steps.apply(now, formOf(theirs.data)));
      setSaving({ busy: false, failure: null });
    } catch (error) {
      setSaving({ busy: false, failure: failureFrom(error) });
    }
  }
  return {
    form, dirty, keeps, saving, edit, save, resolve,
    canUndo: history.past.length > 0,
    canRedo: history.future.length > 0,
    settle: () => setHistory(steps.settle),
    undo: () => setHistory(steps.undo),
    redo: () => setHistory(steps.redo),
    throwAway: () => (setEtag(saved.etag), setHistory(steps.begin(saved.form))),
  };
}
