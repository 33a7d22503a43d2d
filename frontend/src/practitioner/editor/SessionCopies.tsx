import type { PlannedSession, ProgramContent, Session } from '../../shared/program';
import { Button } from '../form/Button';
import { copySession, removeSession } from './edit';
import { placeOf } from './editDays';
import type { Editor } from './editor';
import { focusSoon } from './focus';
import { SESSIONS_MAX } from './limits';
import { sessionName } from './phrases';
import { e } from './words';

interface CopiesProps {
  editor: Editor;
  planned: PlannedSession | null;
  session: Session;
  content: ProgramContent;
}

/** One session may stand on many days: say so, and offer to part them. */
export function SessionCopies({ editor, planned, session, content }: CopiesProps) {
  const days = content.days.filter((day) => day.session === session.key).length;
  const place = planned ? placeOf(content, planned.planned_id) : -1;
  const later = content.days.filter((day, i) => i >= place && day.session === session.key).length;
  const copy = (moves: (at: number) => boolean) => {
    if (content.sessions.length >= SESSIONS_MAX) return editor.say(e('sessionsFull', { n: SESSIONS_MAX }));
    const as = { key: editor.key('s'), name: e('copyName', { name: session.name }) };
    editor.edit((now) => copySession(now, session.key, as, editor.taken(), moves));
    editor.choice.value = { day: planned?.planned_id ?? null, session: planned ? null : as.key };
    editor.say(e('copied', { name: as.name }), true);
    focusSoon('session-heading');
  };
  const remove = () => {
    editor.edit((now) => removeSession(now, session.key));
    editor.say(e('sessionRemoved', { name: sessionName(session), n: days }), true);
    focusSoon('session-heading');
  };
  return (
    <div class="ed-copies">
      <p>{days > 1 ? e('onManyDays', { n: days }) : days === 1 ? e('onOneDay') : e('onNoDay')}</p>
      <p class="ed-row">
        {days > 1 && planned && <Button small onClick={() => copy((at) => at === place)}>{e('copyThisDay')}</Button>}
        {planned && later > 1 && later < days && <Button small onClick={() => copy((at) => at >= place)}>{e('copyFromHere')}</Button>}
        <Button small kind="quiet" onClick={remove}>{e('removeSession')}</Button>
      </p>
    </div>
  );
}
