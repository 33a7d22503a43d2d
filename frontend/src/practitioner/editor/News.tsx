import { time } from '../../shared/dates';
import { me } from '../api/session';
import { useResource } from '../api/resource';
import { Button } from '../form/Button';
import { Doing } from '../rights/Needs';
import type { Editor } from './editor';
import type { Version } from './types';
import { e } from './words';

/** What colleagues did meanwhile, with the choice that it asks for. */
export function News({ editor }: { editor: Editor }) {
  return (
    <>
      <TheirDraft editor={editor} />
      <TheirVersion editor={editor} />
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
  const id = editor.client.value.id;
  const current = useResource<Version>(`/clients/${id}/programs/current`, id).data;
  if (!current || current.number <= (editor.base.value?.number ?? 0)) return null;
  return (
    <section class="ed-news" aria-labelledby="their-version">
      <h2 id="their-version">{e('theirVersionTitle', { number: current.number, name: current.published_by.display_name })}</h2>
      <Doing>
        <p>{e('theirVersionText')}</p>
        <p><Button small onClick={() => (editor.theirs.value = current)}>{e('compare')}</Button></p>
      </Doing>
    </section>
  );
}
