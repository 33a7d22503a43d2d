import { dayShort, daysBetween } from '../../shared/dates';
import { spokenDose, stoneLabel } from '../../shared/dose';
import { Trail, type TrailGroup, type TrailSet } from '../../shared/marks/Trail';
import type { Circuit, PlannedSession, Prescription, ProgramContent, Session } from '../../shared/program';
import type { Library } from '../exercises/entry';
import type { Editor } from './editor';
import { exerciseName, facts, insteadWords, prescriptionWords, sessionName } from './phrases';
import { e } from './words';

/** The chosen day as the phone draws it, before anything is done; a text says the same for the ear. */
export function Preview({ editor }: { editor: Editor }) {
  const { planned, session } = editor.shown.value;
  const content = editor.content.value;
  if (!content || !session) return null;
  return (
    <aside class="ed-preview" aria-labelledby="preview">
      <h2 id="preview">{e('previewTitle')}</h2>
      <p class="sr">{asText(session, editor.library)}</p>
      <div class="ed-phone" aria-hidden="true" inert>
        <div>
          <Top planned={planned} session={session} content={content} />
          <PhoneBody session={session} library={editor.library} />
        </div>
      </div>
      <p class="note soft">{e('previewNote')}</p>
    </aside>
  );
}

function asText(session: Session, library: Library): string {
  if (session.kind !== 'circuit') return `${sessionName(session)}: ${facts(session)}`;
  const list = session.prescriptions.map((one) => `${exerciseName(one, library)}, ${prescriptionWords(one, library)}`).join('; ');
  return e('previewText', { name: sessionName(session), n: session.rounds, list });
}

interface TopProps {
  planned: PlannedSession | null;
  session: Session;
  content: ProgramContent;
}

function Top({ planned, session, content }: TopProps) {
  const left = planned && content.goal ? daysBetween(planned.day.date, content.goal.date) : -1;
  return (
    <div class="ed-phone-top">
      <p>
        <span>{planned && dayShort(planned.day.date)}</span>
        {left >= 0 && <span>{e('daysTo', { n: left, trip: content.goal?.name ?? '' })}</span>}
      </p>
      <p class="ed-phone-title">{session.kind === 'circuit' ? e('phoneRounds', { name: sessionName(session), n: session.rounds }) : sessionName(session)}</p>
    </div>
  );
}

function PhoneBody({ session, library }: { session: Session; library: Library }) {
  return (
    <>
      {session.note && <p class="ed-phone-text">{session.note}</p>}
      {session.kind === 'circuit'
        ? <><Trail groups={rounds(session, library)} onPress={() => undefined} end={e('phoneEnd')} /><Instead session={session} library={library} /></>
        : <p class="ed-phone-text planned">{session.kind === 'rest' ? e('phoneRest') : facts(session)}</p>}
    </>
  );
}

/** On the phone it stands on the card of each movement. */
function Instead({ session, library }: { session: Circuit; library: Library }) {
  const some = session.prescriptions.filter((one) => one.alternatives?.length);
  return <>{some.map((one) => <p key={one.key} class="ed-phone-text">{exerciseName(one, library)}, {insteadWords(one, library)}</p>)}</>;
}

function rounds(session: Circuit, library: Library): TrailGroup[] {
  return Array.from({ length: session.prescriptions.length ? session.rounds : 0 }, (_, round) => ({
    key: String(round),
    title: e('phoneRound', { round: round + 1 }),
    note: e('setsCount', { n: session.prescriptions.length }),
    sets: session.prescriptions.map((one, i) => stone(one, library, round === 0 && i === 0, `${round}.${one.key}`)),
  }));
}

function stone(one: Prescription, library: Library, next: boolean, key: string): TrailSet {
  const name = exerciseName(one, library);
  return { key, state: next ? 'next' : 'todo', caption: name, spoken: `${name}, ${spokenDose(one)}`, ...stoneLabel(one) };
}
