import { time } from '../../shared/dates';
import { me } from '../api/session';
import { useResource } from '../api/resource';
import { Button } from '../form/Button';
import { Looking, useMay } from '../rights/Needs';
import type { Editor } from './editor';
import { focusSoon } from './focus';
import type { Version } from './types';
import { e } from './words';

/** What colleagues did meanwhile, with the choice that it asks for. */
export function News({ editor }: { editor: Editor }) {
  return (
    <>
      <TheirDraft editor={editor} />
      <div role="status"><TheirVersion editor={editor} /></div>
    </>
  );
}

function TheirDraft({ editor }: { editor: Editor }) {
  const kept = editor.keeper.status.value;
  if (kept.state !== 'conflict') return null;
  const { theirs, etag } = kept;
  const take = () => {
    editor.keeper.seen(etag);
    editor.replace(theirs.content);
    editor.say(e('tookTheirDraft', { name: theirs.saved_by.display_name }), true);
  };
  const keep = () => {
    editor.keeper.seen(etag);
    editor.keepNow();
  };
  return (
    <section class="ed-news" aria-labelledby="their-draft">
      <h2 id="their-draft" tabIndex={-1}>{e('theirDraftTitle', { name: theirs.saved_by.display_name, time: time(theirs.saved_at, me.value?.practice.time_zone) })}</h2>
      <p>{e('theirDraftText')}</p>
      <p class="ed-row">
        <Button small onClick={keep}>{e('keepMineDraft')}</Button>
        <Button small onClick={take}>{e('takeTheirDraft')}</Button>
      </p>
    </section>
  );
}

function TheirVersion({ editor }: { editor: Editor }) {
  const may = useMay();
  const id = editor.client.value.id;
  const current = useResource<Version>(`/clients/${id}/programs/current`, id).data;
  if (!current || current.number <= (editor.base.value?.number ?? 0)) return null;
  const said = { number: current.number, name: current.published_by.display_name };
  return (
    <section class="ed-news" aria-labelledby="their-version">
      <h2 id="their-version">{may ? e('theirVersionTitle', said) : e('newerTitle', said)}</h2>
      {may ? <ToCompare editor={editor} current={current} /> : <ToShow editor={editor} current={current} />}
    </section>
  );
}

interface Newer { editor: Editor; current: Version }

const ToCompare = ({ editor, current }: Newer) => (
  <>
    <p>{e('theirVersionText')}</p>
    <p><Button small onClick={() => (editor.theirs.value = current)}>{e('compare')}</Button></p>
  </>
);

/** Offered, not slipped in: somebody reads the other one. */
function ToShow({ editor, current }: Newer) {
  const show = () => {
    editor.show(current);
    editor.say(e('tookTheirs', { number: current.number }));
    focusSoon('editor-heading');
  };
  return <Looking><p><Button small onClick={show}>{e('newerShow', { number: current.number })}</Button></p></Looking>;
}
