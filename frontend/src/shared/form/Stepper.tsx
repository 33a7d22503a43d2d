import { useId, useState } from 'preact/hooks';
import { parseNumber } from '../numbers';
import { s } from '../words/shared';

interface StepperProps {
  label: string;
  value: number;
  unit: string;
  min: number;
  max: number;
  step?: number;
  onChange: (value: number) => void;
}

/** A number with less and more, and direct typing; a decimal comma is understood. */
export function Stepper({ label, value, unit, min, max, step = 1, onChange }: StepperProps) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const error = typed !== null && !isWithin(parseNumber(typed), min, max);
  const set = (next: number) => {
    setTyped(null);
    onChange(Math.max(min, Math.min(max, next)));
  };
  const type = (text: string) => {
    setTyped(text);
    const number = parseNumber(text);
    if (isWithin(number, min, max)) onChange(number);
  };
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="stepper">
        <button type="button" aria-label={s('less', { label })} onClick={() => set(value - step)}>−</button>
        <input
          id={id}
          inputmode="decimal"
          value={typed ?? String(value)}
          aria-invalid={error || undefined}
          aria-describedby={error ? `${id}-error` : `${id}-unit`}
          onInput={(event) => type(event.currentTarget.value)}
          onBlur={() => !error && setTyped(null)}
        />
        <button type="button" aria-label={s('more', { label })} onClick={() => set(value + step)}>+</button>
      </div>
      <span class="hint" id={`${id}-unit`}>{unit}</span>
      {error && <span class="error" id={`${id}-error`}>{s('numberWithin', { min, max })}</span>}
    </div>
  );
}

function isWithin(number: number | null, min: number, max: number): number is number {
  return number !== null && number >= min && number <= max;
}
