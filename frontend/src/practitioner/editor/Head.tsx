import { useState } from 'preact/hooks';
import { time } from '../../shared/dates';
import { me } from '../api/session';
import { Button } from '../form/Button';
import { Link } from '../form/Link';
import { Doing } from '../rights/Needs';
import type { Editor } from './editor';
import { PublishDialog } from './PublishDialog';
import { SaveTemplate } from './SaveTemplate';
import { e } from './words';

/** Whose program this is, whether it is kept, and the buttons for the whole of it. */
export function Head({ editor, onStartAgain }: { editor: Editor; onStartAgain: () => void }) {
  const [open, setOpen] = useState<'publish' | 'template' | null>(null);
  const name = editor.client.value.display_name;
  const number = editor.changed.value ? editor.nextNumber.value : (editor.base.value?.number ?? 1);
  return (
    <header class="ed-head">
      <div class="ed-title">
        <h1 id="editor-heading" tabIndex={-1}>{e('headVersion', { name, number })} {editor.changed.value && <span class="soft">{e('headDraft')}</span>}</h1>
        <Doing><p role="status" class="soft" id="draft-status">{keptWords(editor)}</p></Doing>
      </div>
      <div class="ed-row">
        <Button small onClick={editor.undo} aria-label={editor.canUndo.value ? e('undo') : e('undoNothing')}>{e('undo')}</Button>
        <Button small onClick={editor.redo} aria-label={editor.canRedo.value ? e('redo') : e('redoNothing')}>{e('redo')}</Button>
        <Button small kind="main" onClick={() => setOpen('publish')}>{e('publish', { number: editor.nextNumber.value })}</Button>
      </div>
      <div class="ed-row ed-more">
        <Link to={`/clients/${editor.client.value.id}`}>{e('backTo', { name })}</Link>
        <Button small kind="quiet" onClick={() => setOpen('template')}>{e('saveTemplate')}</Button>
        <Button small kind="quiet" onClick={onStartAgain}>{e('startFromTemplate')}</Button>
        {editor.changed.value && <Button small kind="quiet" onClick={() => discard(editor)}>{e('discard')}</Button>}
      </div>
      <PublishDialog editor={editor} open={open === 'publish'} onClose={() => setOpen(null)} />
      <SaveTemplate editor={editor} open={open === 'template'} onClose={() => setOpen(null)} />
    </header>
  );
}

/** Back to what is published, or to nothing; one step of undo. */
function discard(editor: Editor): void {
  const base = editor.base.value;
  editor.replace(base?.content ?? null);
  editor.say(base ? e('discarded', { number: base.number }) : e('discardedFirst'), true);
}

function keptWords(editor: Editor): string {
  const kept = editor.keeper.status.value;
  const at = (when: Date | string) => time(when, me.value?.practice.time_zone);
  switch (kept.state) {
    case 'nothing': return editor.changed.value ? e('draftWaiting') : editor.base.value ? e('draftNone') : e('draftNew');
    case 'waiting': return e('draftWaiting');
    case 'kept': return e('draftKept', { time: at(kept.at) });
    case 'browser': return kept.stored ? e('draftBrowser', { time: at(kept.at) }) : e('draftOnlyPage');
    case 'refused': return e('draftRefused', { reason: kept.detail });
    case 'conflict': return e('draftConflict', { name: kept.theirs.saved_by.display_name, time: at(kept.theirs.saved_at) });
  }
}
