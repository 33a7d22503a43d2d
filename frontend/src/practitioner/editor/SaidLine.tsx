import { Button } from '../form/Button';
import type { Editor } from './editor';
import { focusSoon } from './focus';
import { e } from './words';

/** What was just done, to be read and heard, with the button that takes it back while nothing else was done. */
export function SaidLine({ editor }: { editor: Editor }) {
  const { text, undoes, takeBack: elsewhere } = editor.said.value;
  const canUndo = elsewhere !== undefined || (undoes !== null && undoes === editor.content.value && editor.canUndo.value);
  const takeBack = () => {
    if (elsewhere) elsewhere();
    else {
      editor.undo();
      editor.say(e('tookBack'));
    }
    document.querySelector<HTMLElement>('#session-heading')?.focus();
  };
  const conflict = editor.keeper.status.value.state === 'conflict';
  return (
    <div class={`ed-said ${text || conflict ? '' : 'empty'}`}>
      <p role="status">{text}</p>
      {conflict && <Button small onClick={() => focusSoon('their-draft')}>{e('decideDraft')}</Button>}
      {canUndo && <Button small onClick={takeBack}>{e('undo')}</Button>}
    </div>
  );
}
