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
import { useUndoKeys } from './useUndoKeys';
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
