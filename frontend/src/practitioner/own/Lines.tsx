import { Button } from '../form/Button';
import { Field } from '../form/Field';
import type { FieldErrors } from '../parts/ErrorSummary';
import { o } from './words';

interface LinesProps {
  name: string;
  lines: readonly string[];
  least: number;
  most: number;
  label: (n: number) => string;
  add: string;
  hint?: string;
  errors: FieldErrors;
  onChange: (lines: string[], field: string | null) => void;
}

/** A few sentences, each in a field of its own. */
export function Lines({ name, lines, least, most, label, add, hint, errors, onChange }: LinesProps) {
  return (
    <div class="own-lines">
      {lines.map((line, i) => (
        <div key={i} class="own-line">
          <Field
            label={label(i + 1)} name={`${name}.${i}`} value={line} error={errors[`${name}.${i}`]} hint={i === 0 ? hint : undefined}
            onInput={(text) => onChange(lines.map((old, at) => (at === i ? text : old)), `${name}.${i}`)}
          />
          {lines.length > least && <Button small kind="quiet" aria-label={o('removeNamed', { what: label(i + 1) })} onClick={() => onChange(lines.filter((_, at) => at !== i), null)}>{o('remove')}</Button>}
        </div>
      ))}
      {lines.length < most && <Button small kind="quiet" onClick={() => onChange([...lines, ''], null)}>{add}</Button>}
    </div>
  );
}
