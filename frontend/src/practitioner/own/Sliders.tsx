import { useEffect, useState } from 'preact/hooks';
import { Input } from '../form/bare';
import type { Preview } from './calls';
import { jointWords } from './Stage';
import type { Change } from './usePreview';
import { named, o } from './words';

type Control = Preview['controls'][number];
const LENGTH_STEP = 0.005;
/** What is changed most comes first. */
const ORDER = ['aim', 'leg', 'foot', 'arm', 'hand', 'spine', 'neck', 'pelvis'];

const partsOf = (path: string): { bare: string; side: 'L' | 'R' | null } => {
  const parts = path.split('.');
  const at = parts.findIndex((part) => part === 'L' || part === 'R');
  return { bare: parts.filter((_, i) => i !== at).join('.'), side: at < 0 ? null : (parts[at] as 'L' | 'R') };
};

/** "Hip flexion, right"; a condition that has no word of its own is told by its point: "Knee, left: up". */
export function numberWords(path: string): string {
  const { bare, side } = partsOf(path);
  const aim = /^aim\.([a-z]+)\.([xyz])$/.exec(bare);
  if (aim && aim[1] !== 'mass') return o('aimAt', { joint: jointWords(side ? `${aim[1]}.${side}` : aim[1]!), axis: o(`axis_${aim[2] as 'x' | 'y' | 'z'}`) });
  return side ? `${named('num', bare)}, ${o(side === 'R' ? 'right' : 'left')}` : named('num', bare);
}

const shown = (control: Control, value: number): string =>
  control.length ? o('ofHeight', { n: Math.round(value * 1000) / 10 }) : o('degrees', { n: Math.round(value) });

interface SlidersProps {
  answer: Preview;
  side: 'L' | 'R';
  onChange: (change: Change, field: string) => void;
  onSettle: () => void;
}

/** Every number of the pose that can be set: of the trunk, and of one side. */
export function Sliders({ answer, side, onChange, onSettle }: SlidersProps) {
  const mine = answer.controls.filter(({ path }) => [null, side].includes(partsOf(path).side) || path.startsWith('aim.'));
  const told = [...mine].sort((a, b) => ORDER.indexOf(a.path.split('.')[0]!) - ORDER.indexOf(b.path.split('.')[0]!));
  return (
    <div class="own-sliders">
      {told.map((control) => <Slider key={control.path} control={control} onChange={(value) => onChange({ set: { [control.path]: value } }, control.path)} onSettle={onSettle} />)}
    </div>
  );
}

function Slider({ control, onChange, onSettle }: { control: Control; onChange: (value: number) => void; onSettle: () => void }) {
  const [moved, setMoved] = useState<number | null>(null);
  const value = moved ?? control.value;
  const step = control.length ? LENGTH_STEP : 1;
  // What the person holds is shown until the answer has come to it; then undo and dragging show through.
  useEffect(() => setMoved((held) => (held !== null && Math.abs(held - control.value) < step ? null : held)), [control]);
  return (
    <label>
      <span>{numberWords(control.path)}</span>
      <Input
        type="range" min={Math.floor(control.low / step) * step} max={Math.ceil(control.high / step) * step} step={step} value={value} aria-valuetext={shown(control, value)} data-path={control.path}
        onInput={(event) => { setMoved(event.currentTarget.valueAsNumber); onChange(event.currentTarget.valueAsNumber); }} onBlur={() => (setMoved(null), onSettle())}
      />
      <output>{shown(control, value)}</output>
    </label>
  );
}
