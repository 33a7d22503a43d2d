import type { ReadinessNote, ReadinessShown } from '../api/types';
import { moment } from '../parts/heard';
import { t } from '../words';
import { Items } from './Items';
import { changeWords } from './sentences';

function Signed({ note, zone }: { note: ReadinessNote; zone: string }) {
  return (
    <>
      <p><b>{t(`rdyVerdict_${note.verdict}`)}</b></p>
      <p class="rdy-words">{note.words}</p>
      <p class="soft">
        {t('rdySigned', { name: note.signed_by, time: moment(note.signed_at, zone) })}
        {note.superseded_at && <>, {t('rdySuperseded', { time: moment(note.superseded_at, zone) })}</>}
      </p>
    </>
  );
}

/** The note that stands, and what is otherwise since it was signed. */
export function StandingNote({ note, now, zone }: { note: ReadinessNote | undefined; now: ReadinessShown; zone: string }) {
  const changed = note ? changeWords(note.shown, now) : [];
  return (
    <section aria-labelledby="note">
      <h2 id="note">{t('rdyNote')}</h2>
      {note ? <div class="decided"><Signed note={note} zone={zone} /></div> : <p class="soft">{t('rdyNoNote')}</p>}
      {changed.length > 0 && <><p>{t('rdyChanged')}</p><ul class="facts">{changed.map((line) => <li key={line}>{line}</li>)}</ul></>}
    </section>
  );
}

/** All notes that no longer stand, each with what it rested on. */
export function History({ client, notes, zone }: { client: string; notes: readonly ReadinessNote[]; zone: string }) {
  if (notes.length === 0) return null;
  return (
    <section aria-labelledby="history" class="screen-only">
      <h2 id="history">{t('rdyHistory')}</h2>
      <ul class="words">
        {notes.map((note) => (
          <li key={note.id}>
            <Signed note={note} zone={zone} />
            <details><summary>{t('rdyAsSigned')}<span class="sr">: {moment(note.signed_at, zone)}</span></summary><Items client={client} items={note.shown.items} /></details>
          </li>
        ))}
      </ul>
    </section>
  );
}
