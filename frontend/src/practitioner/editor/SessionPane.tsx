import { dayName, dayAndMonth } from '../../shared/dates';
import type { PlannedSession, Session } from '../../shared/program';
import { Doing } from '../rights/Needs';
import { DayBar } from './DayBar';
import type { Editor } from './editor';
import { sessionName } from './phrases';
import { Prescriptions } from './Prescriptions';
import { SessionCopies } from './SessionCopies';
import { SessionFields, SessionNote, SessionNumbers } from './SessionFields';
import { fieldId } from './pointer';
import { e } from './words';

/** The chosen day and what is done on it; its doses stand first, what is changed less often is folded. */
export function SessionPane({ editor }: { editor: Editor }) {
  const { planned, session } = editor.shown.value;
  const content = editor.content.value;
  if (!content || !session) {
    return (
      <section class="ed-session" aria-labelledby="session-heading">
        <h2 id="session-heading" tabIndex={-1}>{e('noSession')}</h2>
        <Doing><p id={fieldId('/sessions')} tabIndex={-1}>{e('noSessionText')}</p></Doing>
      </section>
    );
  }
  const at = `/sessions/${content.sessions.indexOf(session)}`;
  return (
    <section class="ed-session" aria-labelledby="session-heading" id={fieldId(at)} tabIndex={-1}>
      <div class="ed-session-head">
        <h2 id="session-heading" tabIndex={-1}>{heading(planned, session)}</h2>
        <p class="soft" role="status">{sums(editor, session)}</p>
      </div>
      <SessionNumbers editor={editor} session={session} at={at} key={session.key} />
      <div class="ed-folds">
        <details open={session.kind !== 'circuit'}>
          <summary>{e('dayAndName')}</summary>
          {planned && <DayBar editor={editor} planned={planned} content={content} key={planned.planned_id} />}
          <SessionFields editor={editor} session={session} at={at} key={session.key} />
        </details>
        <SessionNote editor={editor} session={session} at={at} key={`${session.key}-note`} />
      </div>
      {session.kind === 'circuit' && <Prescriptions editor={editor} session={session} at={at} />}
      <Doing><SessionCopies editor={editor} planned={planned} session={session} content={content} /></Doing>
    </section>
  );
}

function heading(planned: PlannedSession | null, session: Session): string {
  if (!planned) return sessionName(session);
  return `${dayName(planned.day.date)} ${dayAndMonth(planned.day.date)}: ${sessionName(session)}`;
}

/** "about 34 minutes, 12 sets", by the server's count. */
function sums(editor: Editor, session: Session): string {
  const sum = editor.checker.checked.value?.checks.sessions.find((one) => one.key === session.key);
  if (!sum || session.kind === 'rest') return '';
  const minutes = sum.minutes === null ? e('minutesUnknown') : e('minutesAbout', { n: sum.minutes });
  return session.kind === 'circuit' ? `${minutes}, ${e('setsCount', { n: sum.sets })}` : minutes;
}
