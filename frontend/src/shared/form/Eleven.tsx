import { useId } from 'preact/hooks';
import { s } from '../words/shared';

interface ElevenProps {
  legend: string;
  hideLegend?: boolean;
  /** Words for 0, 5 and 10, the same everywhere the scale is used. */
  ends: Record<0 | 5 | 10, string>;
  value: number | null;
  onChange: (value: number) => void;
  error?: string | null | undefined;
}

const NUMBERS = Array.from({ length: 11 }, (_, n) => n);

/** 0 to 10, for pain and for effort alike: higher is more. No color scale. */
export function Eleven({ legend, hideLegend, ends, value, onChange, error }: ElevenProps) {
  const name = useId();
  return (
    <fieldset class="eleven-set" aria-invalid={error ? true : undefined} aria-describedby={error ? `${name}-error` : undefined}>
      <legend class={hideLegend ? 'sr' : ''}>{legend}</legend>
      <dl class="ends">
        {([0, 5, 10] as const).map((n) => (
          <div key={n}>
            <dt>{n}</dt>
            <dd>{ends[n]}</dd>
          </div>
        ))}
      </dl>
      <div class="eleven">
        {NUMBERS.map((n) => (
          <label key={n} style={{ '--rise': `${n * 10}%` }}>
            <input type="radio" name={name} value={n} checked={value === n} onChange={() => onChange(n)} />
            <span>{n}</span>
          </label>
        ))}
      </div>
      <p class="chosen" role="status">{value !== null && <b>{s('ofTen', { value })}</b>}</p>
      {error && <p class="error" id={`${name}-error`}>{error}</p>}
    </fieldset>
  );
}
