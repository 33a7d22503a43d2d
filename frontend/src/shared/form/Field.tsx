import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

interface FieldProps {
  label: string;
  value: string;
  onInput: (text: string) => void;
  hint?: ComponentChildren;
  error?: string | null | undefined;
  /** Shown after the field and heard with it: "km". */
  unit?: string;
  type?: 'text' | 'email' | 'password' | 'date' | 'time' | 'search' | 'tel';
  inputMode?: 'text' | 'numeric' | 'decimal';
  multiline?: boolean;
  autoComplete?: string;
  required?: boolean;
  name?: string;
}

/** One labelled field. The error stands beside it and says how to mend it. */
export function Field({ label, value, onInput, hint, error, unit, multiline, inputMode, autoComplete, ...rest }: FieldProps) {
  const id = useId();
  const told = [hint && `${id}-hint`, unit && `${id}-unit`, error && `${id}-error`].filter(Boolean).join(' ');
  const shared = {
    ...rest,
    id,
    value,
    onInput: (event: Event) => onInput((event.currentTarget as HTMLInputElement).value),
    'aria-invalid': error ? true : undefined,
    'aria-describedby': told || undefined,
    inputmode: inputMode,
    autocomplete: autoComplete,
  } as const;
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {hint && <span class="hint" id={`${id}-hint`}>{hint}</span>}
      <span class="with-unit">
        {multiline ? <textarea {...(shared as object)} /> : <input {...(shared as object)} />}
        {unit && <span id={`${id}-unit`}>{unit}</span>}
      </span>
      {error && <span class="error" id={`${id}-error`}>{error}</span>}
    </div>
  );
}

interface SelectProps<V extends string> {
  label: string;
  value: V;
  options: readonly { value: V; label: string }[];
  onChange: (value: V) => void;
  hint?: ComponentChildren;
}

export function Select<V extends string>({ label, value, options, onChange, hint }: SelectProps<V>) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {hint && <span class="hint" id={`${id}-hint`}>{hint}</span>}
      <select id={id} value={value} aria-describedby={hint ? `${id}-hint` : undefined} onChange={(event) => onChange(event.currentTarget.value as V)}>
        {options.map((option) => <option key={option.value} value={option.value}>{option.label}</option>)}
      </select>
    </div>
  );
}
