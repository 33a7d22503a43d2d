import { Shown, ShownDay } from '../form/Shown';
import { Area, Input } from '../form/bare';
import { useMay } from '../rights/Needs';
import { TITLE_LETTERS_MAX } from './limits';

interface TextBoxProps {
  id: string;
  label: string;
  /** Heard before the label: which exercise this belongs to. */
  of?: string;
  hint?: string;
  value: string;
  multiline?: boolean;
  /** Most letters that the server takes. */
  max?: number;
  onChange: (text: string) => void;
}

/** A line or some lines of text with a visible label. */
export function TextBox({ id, label, of, hint, value, multiline, max = TITLE_LETTERS_MAX, onChange }: TextBoxProps) {
  if (!useMay()) return <Shown label={label} value={value} />;
  const shared = {
    id,
    value,
    maxLength: max,
    'aria-describedby': hint ? `${id}-hint` : undefined,
    onInput: (event: Event) => onChange((event.currentTarget as HTMLInputElement).value),
  };
  return (
    <div class="field">
      <label for={id}>{of && <span class="sr">{of}, </span>}{label}</label>
      {hint && <span class="hint" id={`${id}-hint`}>{hint}</span>}
      {multiline ? <Area {...shared} rows={2} /> : <Input {...shared} autocomplete="off" />}
    </div>
  );
}

interface DateBoxProps {
  id: string;
  label: string;
  hint?: string;
  value: string;
  required?: boolean;
  onChange: (date: string) => void;
}

/** A calendar day; an empty or half-typed one changes nothing and leaves the last whole one in force. */
export function DateBox({ id, label, hint, value, required, onChange }: DateBoxProps) {
  if (!useMay()) return <ShownDay label={label} value={value} />;
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {hint && <span class="hint" id={`${id}-hint`}>{hint}</span>}
      <Input
        id={id}
        type="date"
        min="2000-01-01"
        max="2099-12-31"
        value={value}
        required={required}
        aria-describedby={hint ? `${id}-hint` : undefined}
        onChange={(event) => onChange(event.currentTarget.value)}
      />
    </div>
  );
}
