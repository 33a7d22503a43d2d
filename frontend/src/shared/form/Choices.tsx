import { useId } from 'preact/hooks';

interface Option<V extends string> {
  value: V;
  label: string;
}
interface ChoicesProps<V extends string> {
  legend: string;
  hideLegend?: boolean;
  options: readonly Option<V>[];
  error?: string | null | undefined;
}

interface FrameProps<V extends string> extends ChoicesProps<V> {
  type: 'radio' | 'checkbox';
  isOn: (value: V) => boolean;
  onPick: (value: V) => void;
}

function Frame<V extends string>({ legend, hideLegend, options, error, type, isOn, onPick }: FrameProps<V>) {
  const name = useId();
  return (
    <fieldset aria-invalid={error ? true : undefined} aria-describedby={error ? `${name}-error` : undefined}>
      <legend class={hideLegend ? 'sr' : ''}>{legend}</legend>
      <div class="choices">
        {options.map(({ value, label }) => (
          <label key={value}>
            <input type={type} name={name} value={value} checked={isOn(value)} onChange={() => onPick(value)} />
            <span>{label}</span>
          </label>
        ))}
      </div>
      {error && <p class="error" id={`${name}-error`}>{error}</p>}
    </fieldset>
  );
}

/** One of several. */
export function Choices<V extends string>(props: ChoicesProps<V> & { value: V | null; onChange: (value: V) => void }) {
  return <Frame {...props} type="radio" isOn={(value) => value === props.value} onPick={props.onChange} />;
}

/** Any of several. */
export function Several<V extends string>(props: ChoicesProps<V> & { value: readonly V[]; onChange: (value: V[]) => void }) {
  const toggle = (pick: V) =>
    props.onChange(props.value.includes(pick) ? props.value.filter((value) => value !== pick) : [...props.value, pick]);
  return <Frame {...props} type="checkbox" isOn={(value) => props.value.includes(value)} onPick={toggle} />;
}
