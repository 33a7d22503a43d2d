import { useEffect, useState } from 'preact/hooks';
import { dayAndTime } from '../../shared/dates';
import { me } from '../api/session';
import { Button } from '../form/Button';
import { linesOf, pairs, type Pair } from './compareLines';
import type { Editor } from './editor';
import { focusSoon } from './focus';
import type { Version } from './types';
import { e } from './words';

/** A colleague published meanwhile: both programs beside each other, and the choice which to go on from. */
export function Compare({ editor, theirs }: { editor: Editor; theirs: Version }) {
  const [all, setAll] = useState(false);
  const content = editor.content.value;
  useEffect(() => focusSoon('compare'), []);
  if (!content) return null;
  const rows = pairs(linesOf(content, editor.library), linesOf(theirs.content, editor.library));
  const shown = all ? rows : rows.filter((row) => row.differs);
  const take = (which: 'mine' | 'theirs') => {
    editor.goOnFrom(theirs, which);
    editor.say(which === 'mine' ? e('keptMine', { number: theirs.number }) : e('tookTheirs', { number: theirs.number }), which === 'theirs');
    focusSoon('editor-heading');
  };
  return (
    <section aria-labelledby="compare">
      <h1 id="compare" tabIndex={-1}>{e('compareTitle', { number: theirs.number })}</h1>
      <p>{e('compareText', { name: theirs.published_by.display_name, at: dayAndTime(theirs.published_at, me.value?.practice.time_zone), number: theirs.number })}{theirs.note && ` ${e('compareNote', { note: theirs.note })}`}</p>
      <p class="ed-row">
        <Button kind="main" onClick={() => take('mine')}>{e('keepMine', { number: theirs.number })}</Button>
        <Button onClick={() => take('theirs')}>{e('takeTheirs', { number: theirs.number })}</Button>
        <Button kind="quiet" onClick={() => (editor.theirs.value = null)}>{e('compareLater')}</Button>
      </p>
      <p>{e('compareLines', { n: rows.filter((row) => row.differs).length, of: rows.length })} <Button small kind="quiet" aria-pressed={all} onClick={() => setAll(!all)}>{all ? e('compareOnlyChanged') : e('compareAll')}</Button></p>
      <Table rows={shown} number={theirs.number} />
    </section>
  );
}

function Table({ rows, number }: { rows: readonly Pair[]; number: number }) {
  return (
    <table class="plain ed-compare">
      <thead><tr><th scope="col">{e('compareWhat')}</th><th scope="col">{e('compareMine')}</th><th scope="col">{e('compareTheirs', { number })}</th></tr></thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.id}>
            <th scope="row">{row.title}{row.differs && <> <b class="call">{e('changedWord')}</b></>}</th>
            <td data-of={e('compareMine')}>{row.mine ?? e('compareAbsent')}</td>
            <td data-of={e('compareTheirs', { number })}>{row.theirs ?? e('compareAbsent')}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
