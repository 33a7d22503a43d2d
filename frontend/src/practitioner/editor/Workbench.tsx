import { useEffect } from 'preact/hooks';
import { ChangesList } from './ChangesList';
import type { Editor } from './editor';
import { focusIfLost } from './focus';
import { Frame } from './Frame';
import { Head } from './Head';
import { LoadOfWeeks } from './LoadOfWeeks';
import { News } from './News';
import { Preview } from './Preview';
import { Problems } from './Problems';
import { SaidLine } from './SaidLine';
import { SessionPane } from './SessionPane';
import { Weeks } from './Weeks';

/** The three columns: weeks, session, phone; above them, in a line while there is little to say, what changed and what does not fit. */
export function Workbench({ editor, onStartAgain }: { editor: Editor; onStartAgain: () => void }) {
  useUndoKeys(editor);
  useEffect(() => focusIfLost('editor-heading'), []);
  return (
    <div onFocusOut={editor.settle}>
      <Head editor={editor} onStartAgain={onStartAgain} />
      <News editor={editor} />
      <div class="ed-overview">
        <ChangesList editor={editor} />
        <Problems editor={editor} />
        <LoadOfWeeks editor={editor} />
        <Frame editor={editor} />
      </div>
      <SaidLine editor={editor} />
      <div class="ed-columns">
        <Weeks editor={editor} />
        <SessionPane editor={editor} />
        <Preview editor={editor} />
      </div>
    </div>
  );
}

/** Ctrl+Z, Ctrl+Shift+Z and Ctrl+Y (Cmd on a Mac) anywhere on the page, but not behind a dialog. */
function useUndoKeys(editor: Editor): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || document.querySelector('dialog[open]')) return;
      const key = event.key.toLowerCase();
      const does = key === 'y' || (key === 'z' && event.shiftKey) ? editor.redo : key === 'z' ? editor.undo : null;
      if (!does) return;
      event.preventDefault();
      does();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, [editor]);
}
