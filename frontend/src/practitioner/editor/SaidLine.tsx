import { Button } from '../../shared/form/Button';
import type { Editor } from './editor';
import { e } from './words';

/** What was just done, to be read and heard, with the button that takes it back while nothing else was done. */
export function SaidLine({ editor }: { editor: Editor }) {
  const { text, undoes } = editor.said.value;
  const canUndo = undoes !== null && undoes === editor.content.value && editor.canUndo.value;
  const takeBack = () => {
    editor.undo();
    editor.say(e('tookBack'));
    document.querySelector<HTMLElement>('#session-heading')?.focus();
  };
  return (
    <div class={`ed-said ${text ? '' : 'empty'}`}>
      <p role="status">{text}</p>
      {canUndo && <Button small onClick={takeBack}>{e('undo')}</Button>}
    </div>
  );
}
