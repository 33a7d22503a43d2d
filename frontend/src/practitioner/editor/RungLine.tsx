import type { Prescription } from '../../shared/program';
import { Input } from '../form/bare';
import { missingKit, type Entry, type Variant } from '../exercises/entry';
import type { Editor } from './editor';
import { fieldId } from './pointer';
import { coded, e } from './words';

interface RungLineProps {
  editor: Editor;
  one: Prescription;
  at: string;
  onChange: (entry: Entry, variant: string) => void;
}

/** The ladder laid on a line, easier on the left; the arrow keys go along it. */
export function RungLine({ editor, one, at, onChange }: RungLineProps) {
  const entry = editor.library.get(one.exercise);
  if (!entry) return <p id={fieldId(`${at}/exercise`)} tabIndex={-1} class="error">{e('unknownExercise', { code: one.exercise })}</p>;
  const known = entry.ladder.some((rung) => rung.variant === one.variant);
  return (
    <fieldset class="ed-rungs">
      <legend class="sr">{e('rungOf', { name: entry.name })}</legend>
      {!known && <p class="error">{e('unknownVariant', { code: one.variant })}</p>}
      {entry.ladder.map((rung, i) => {
        const chosen = rung.variant === one.variant;
        return (
          <label key={rung.variant}>
            <Input
              type="radio"
              name={`rung-${at}`}
              id={chosen || (!known && i === 0) ? fieldId(`${at}/variant`) : undefined}
              checked={chosen}
              onChange={() => onChange(entry, rung.variant)}
            />
            <span><span lang="en">{rung.name}</span><NotInHouse rung={rung} kit={editor.client.value.kit} /></span>
          </label>
        );
      })}
    </fieldset>
  );
}

/** Says what a rung needs and the house does not have. */
export function NotInHouse({ rung, kit }: { rung: Variant; kit: readonly string[] }) {
  const missing = missingKit(rung.kit, kit);
  if (missing.length === 0) return null;
  return <small>{e('notInHouse', { kit: missing.map((each) => coded('kit', each)).join(', ') })}</small>;
}
