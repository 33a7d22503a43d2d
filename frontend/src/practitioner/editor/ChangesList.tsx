import type { Editor } from './editor';
import { e } from './words';

/** What the client will find different, in the server's words. */
export function ChangesList({ editor }: { editor: Editor }) {
  const checked = editor.checker.checked.value;
  const base = editor.base.value;
  const changes = checked?.checks.changes ?? [];
  const title = !checked ? e('checking') : !base ? e('changesFirst') : changes.length ? e('changesCount', { n: changes.length, number: base.number }) : e('changesNone', { number: base.number });
  return (
    <section aria-labelledby="changes" class="ed-changes">
      <h2 id="changes"><span role="status">{title}</span></h2>
      {base && changes.length > 0 && (
        <ul class="ed-list">
          {changes.map((sentence) => <li key={sentence}>{sentence}</li>)}
        </ul>
      )}
    </section>
  );
}
