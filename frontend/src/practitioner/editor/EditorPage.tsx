import './editor.css';
import { useEffect, useState } from 'preact/hooks';
import { query, type Params } from '../../shared/router';
import { failureFrom, type Failure } from '../api/request';
import { Button } from '../form/Button';
import { Link } from '../form/Link';
import { Looking, useMay } from '../rights/Needs';
import { t } from '../words';
import { Compare } from './Compare';
import type { Editor } from './editor';
import { failureWords } from './failure';
import { loadEditor } from './load';
import { News } from './News';
import { Start } from './Start';
import { e } from './words';
import { Workbench } from './Workbench';

/** The program of one client: written, looked over, published. */
export function EditorPage({ params }: { params: Params }) {
  const [editor, failure, again] = useEditor(params.id ?? '');
  return (
    <main class="ed-page">
      {!editor && <p class="ed-back"><Link to={`/clients/${params.id}`}>{e('backToClient')}</Link></p>}
      {editor ? <Desk editor={editor} /> : failure ? <NotLoaded failure={failure} again={again} /> : <Loading />}
    </main>
  );
}

function Desk({ editor }: { editor: Editor }) {
  const may = useMay();
  const [starting, setStarting] = useState(may && query.value.has('template'));
  const isComparing = editor.theirs.value !== null && editor.content.value !== null;
  if (!isComparing && editor.content.value && !starting) return <Workbench editor={editor} onStartAgain={() => setStarting(true)} />;
  const { id, display_name: name } = editor.client.value;
  return (
    <>
      <p class="ed-back"><Link to={`/clients/${id}`}>{e('backTo', { name })}</Link></p>
      {isComparing && editor.theirs.value
        ? <Compare editor={editor} theirs={editor.theirs.value} />
        : !may ? <Nothing editor={editor} />
        : <Start editor={editor} onDone={() => setStarting(false)} canLeave={editor.content.value !== null} />}
    </>
  );
}

/** For whoever may not begin a program. */
function Nothing({ editor }: { editor: Editor }) {
  return (
    <>
      <h1>{editor.client.value.display_name}</h1>
      <News editor={editor} />
      <p>{t('programNone')}</p>
    </>
  );
}

function Loading() {
  return (
    <>
      <h1>{e('programTitle')}</h1>
      <p role="status">{e('loading')}</p>
    </>
  );
}

function NotLoaded({ failure, again }: { failure: Failure; again: () => void }) {
  return (
    <>
      <h1>{e('programTitle')}</h1>
      <p role="alert">{failureWords(failure)}</p>
      <Looking><p><Button kind="main" onClick={again}>{e('tryAgain')}</Button></p></Looking>
    </>
  );
}

function useEditor(id: string): [Editor | null, Failure | null, () => void] {
  const [editor, setEditor] = useState<Editor | null>(null);
  const [failure, setFailure] = useState<Failure | null>(null);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    let here = true;
    setFailure(null);
    loadEditor(id).then(
      (loaded) => here && setEditor(loaded),
      (error: unknown) => here && setFailure(failureFrom(error)),
    );
    return () => void (here = false);
  }, [id, turn]);
  useEffect(() => (editor ? follow(editor) : undefined), [editor]);
  return [editor, failure, () => setTurn(turn + 1)];
}

/** Keeps and checks while the page is open; on leaving it, by whatever way, what waits is sent. */
function follow(editor: Editor): () => void {
  const stop = editor.run();
  const send = () => void editor.keeper.flush();
  const hidden = () => document.visibilityState === 'hidden' && send();
  addEventListener('online', send);
  addEventListener('pagehide', send);
  document.addEventListener('visibilitychange', hidden);
  return () => {
    removeEventListener('online', send);
    removeEventListener('pagehide', send);
    document.removeEventListener('visibilitychange', hidden);
    send();
    stop();
  };
}
