import { useState } from 'preact/hooks';
import { Button } from '../form/Button';
import { Input } from '../form/bare';
import { languageOf, missingKit, type Entry } from '../exercises/entry';
import { ANY, find, fitting, offered } from '../exercises/filter';
import { Filters } from '../exercises/Filters';
import type { Editor } from './editor';
import { focusSoon } from './focus';
import { coded, e } from './words';

/** Find an exercise and put it at the end of the session. */
export function AddExercise({ editor, onAdd }: { editor: Editor; onAdd: (entry: Entry) => void }) {
  const [open, setOpen] = useState(false);
  const [filter, setFilter] = useState(ANY);
  const { kit } = editor.client.value;
  const entries = offered(editor.library.values());
  const found = find(entries, filter);
  const close = () => {
    setOpen(false);
    focusSoon('add-exercise');
  };
  const add = (entry: Entry) => {
    setOpen(false);
    onAdd(entry);
  };
  if (!open) return <p><Button small id="add-exercise" onClick={() => (setOpen(true), focusSoon('find-exercise'))}>{e('addExercise')}</Button></p>;
  return (
    <section class="ed-find" aria-labelledby="find-exercise">
      <h3 id="find-exercise" tabIndex={-1}>{e('addExercise')}</h3>
      <div class="ed-fields">
        <Filters entries={entries} filter={filter} onChange={setFilter} />
        <label class="ed-check">
          <Input type="checkbox" checked={filter.kit !== null} onChange={(event) => setFilter({ ...filter, kit: event.currentTarget.checked ? kit : null })} />
          <span>{e('onlyWithKit')}<small>{kit.length ? e('houseHas', { kit: kit.map((each) => coded('kit', each)).join(', ') }) : e('houseUnknown')}</small></span>
        </label>
      </div>
      <p role="status" class="soft">{e('found', { n: found.length })}</p>
      <ul class="ed-found">
        {found.map((entry) => <Found key={entry.code} entry={entry} kit={kit} onAdd={() => add(entry)} />)}
      </ul>
      <Button small kind="quiet" onClick={close}>{e('cancel')}</Button>
    </section>
  );
}

function Found({ entry, kit, onAdd }: { entry: Entry; kit: readonly string[]; onAdd: () => void }) {
  const fits = fitting(entry, kit);
  const lacks = missingKit(entry.ladder[0]?.kit ?? [], kit).map((each) => coded('kit', each)).join(', ');
  const house = fits.length === entry.ladder.length ? '' : fits.length ? e('someFit', { n: fits.length, of: entry.ladder.length }) : e('notInHouse', { kit: lacks });
  return (
    <li>
      <div>
        <b lang={languageOf(entry)}>{entry.name}</b>
        <small>{entry.trains.map((code) => coded('quality', code)).join(', ')}</small>
        {house && <small>{house}</small>}
      </div>
      <Button small onClick={onAdd} aria-label={e('addNamed', { name: entry.name })}>{e('add')}</Button>
    </li>
  );
}
