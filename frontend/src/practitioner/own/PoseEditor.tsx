import { useState } from 'preact/hooks';
import { Button } from '../form/Button';
import { Choices } from '../form/Choices';
import { Select } from '../form/Field';
import { Input } from '../form/bare';
import { failureWords } from '../editor/failure';
import { Contacts } from './Contacts';
import { Findings } from './Findings';
import { addKey, KEYS_MAX, keyNames, removeKey, type Movement, type View } from './model';
import { Sliders } from './Sliders';
import { Stage } from './Stage';
import { usePreview } from './usePreview';
import { o } from './words';

const VIEWS = ['side', 'front', 'back', 'quarter', 'quarter-left'] as const satisfies readonly View[];

interface PoseEditorProps {
  name: string;
  movement: Movement;
  onChange: (movement: Movement, field?: string | null) => void;
  onSettle: () => void;
}

/** The drawing of one variant: its key poses, the joints to drag, the numbers behind them. */
export function PoseEditor({ name, movement, onChange, onSettle }: PoseEditorProps) {
  const names = keyNames(movement);
  const [chosen, setChosen] = useState(names[0]!);
  const [moving, setMoving] = useState<'R' | 'L' | 'both'>('R');
  const [plays, setPlays] = useState(false);
  const [touched, setTouched] = useState<string | null>(null);
  const key = names.includes(chosen) ? chosen : names[0]!;
  const view = movement.views[0]!;
  const side = moving === 'L' ? 'L' : 'R';
  const { answer, failure, change, again } = usePreview(movement, { key, view, mirror: moving === 'both', whole: plays }, (next) => onChange(next, touched));
  const at = names.indexOf(key);
  const settle = () => (setTouched(null), onSettle());
  return (
    <div class="own-poses">
      <div class="own-picture">
        <Poses names={names} chosen={key} onChoose={setChosen} />
        {answer
          ? <Stage answer={answer} side={side} moves={plays} onSettle={settle} alt={plays ? o('drawAltMoving', { name }) : o('drawAlt', { n: at + 1, name })} onChange={(next) => (setTouched(`drag ${next.drag?.point}`), change(next))} />
          : !failure && <p role="status">{o('drawWait')}</p>}
        <div role="alert">{failure && <p class="error">{failure.kind === 'network' ? o('drawOffline') : failureWords(failure)} <Button small onClick={again}>{o('tryAgain')}</Button></p>}</div>
        <div class="ed-row">
          <Button small aria-pressed={plays} onClick={() => setPlays(!plays)}>{o(plays ? 'stop' : 'play')}</Button>
          {names.length < KEYS_MAX && <Button small onClick={() => { const added = addKey(movement, key); onChange(added.movement); setChosen(added.key); }}>{o('addPose')}</Button>}
          {names.length > 1 && <Button small kind="quiet" onClick={() => onChange(removeKey(movement, key))}>{o('removePose')}</Button>}
          {movement.poster === key ? <span class="soft">{o('posterIs')}</span> : <Button small kind="quiet" onClick={() => onChange({ ...movement, poster: key })}>{o('posterSet')}</Button>}
        </div>
        {answer && <Findings found={answer.findings} />}
      </div>
      <div class="own-numbers">
        <div class="ed-fields">
          <Select label={o('view')} value={view} options={VIEWS.map((value) => ({ value, label: o(`view_${value}`) }))} onChange={(value) => onChange({ ...movement, views: [value] })} />
          <label class="field"><b>{o('seconds')}</b><Input type="number" min={0.4} max={12} step={0.2} value={movement.seconds} onChange={(event) => onChange({ ...movement, seconds: Math.min(12, Math.max(0.4, event.currentTarget.valueAsNumber || movement.seconds)) })} /></label>
        </div>
        <Choices legend={o('side')} options={(['R', 'L', 'both'] as const).map((value) => ({ value, label: o(`side_${value}`) }))} value={moving} onChange={setMoving} />
        <p class="soft">{o('handleHow')}</p>
        <h4>{o('numbers')}</h4>
        {answer && <Sliders answer={answer} side={side} onSettle={settle} onChange={(next, path) => (setTouched(`set ${path}`), change(next))} />}
        <Contacts movement={movement} onChange={onChange} />
      </div>
    </div>
  );
}

function Poses({ names, chosen, onChoose }: { names: readonly string[]; chosen: string; onChoose: (name: string) => void }) {
  return (
    <div class="ed-row" role="group" aria-label={o('poses')}>
      {names.map((name, i) => <Button key={name} small aria-pressed={name === chosen} onClick={() => onChoose(name)}>{o('pose', { n: i + 1 })}</Button>)}
    </div>
  );
}
