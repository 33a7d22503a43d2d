import type { Editor } from './editor';
import { e } from './words';

/** Sentences shown at once; more are folded so that the session stays in sight. */
const SHOWN = 3;

/** What the client will find different, in the server's words. */
export function ChangesList({ editor }: { editor: Editor }) {
  const checked = editor.checker.checked.value;
  const base = editor.base.value;
  const changes = checked?.checks.changes ?? [];
  const title = !checked ? e('checking') : !base ? e('changesFirst') : changes.length ? e('changesCount', { n: changes.length, number: base.number }) : e('changesNone', { number: base.number });
  return (
    <section aria-labelledby="changes">
      <h2 id="changes" class="sr">{e('changesTitle')}</h2>
      <p role="status"><b>{title}</b></p>
      {base && <Sentences all={changes.slice(0, SHOWN)} />}
      {base && changes.length > SHOWN && (
        <details>
          <summary>{e('changesMore', { n: changes.length - SHOWN })}</summary>
          <Sentences all={changes.slice(SHOWN)} />
        </details>
      )}
    </section>
  );
}

function Sentences({ all }: { all: readonly string[] }) {
  if (all.length === 0) return null;
  return <ul class="ed-list" lang="en">{all.map((sentence) => <li key={sentence}>{sentence}</li>)}</ul>;
}
