import { useState } from 'preact/hooks';
import { Button } from '../../shared/form/Button';
import { Select } from '../../shared/form/Field';
import { useResource } from '../api/resource';
import type { Items } from '../api/types';
import { failureWords } from '../editor/failure';
import type { Entry } from '../exercises/entry';
import { useWrite } from '../parts/useWrite';
import { readPoses } from './calls';
import type { Movement } from './model';
import { PoseEditor } from './PoseEditor';
import { o } from './words';

/** Poses to begin from: a key pose of a drawing of the library. */
const STARTS = {
  standing: ['squat', 'free', 'up'],
  seat: ['squat', 'chair', 'down'],
  half: ['split-squat', 'half', 'up'],
  back: ['dead-bug', 'leg-reach', 'in'],
  side: ['hip-abduction', 'side-lying', 'down'],
  fours: ['bird-dog', 'leg', 'in'],
  plank: ['front-plank', 'toes', 'up'],
} as const;
type Start = keyof typeof STARTS | 'copy';
const CHOICES: readonly Start[] = ['standing', 'seat', 'half', 'back', 'side', 'fours', 'plank', 'copy'];

interface DrawingProps {
  name: string;
  of: string;
  movement: Movement | undefined;
  onChange: (movement: Movement | null, field?: string | null) => void;
  onSettle: () => void;
}

/** The drawing of a variant; an exercise works without one. */
export function Drawing({ name, of, movement, onChange, onSettle }: DrawingProps) {
  return (
    <section class="own-drawing" aria-label={`${of}: ${o('drawHead')}`}>
      <h3>{o('drawHead')}</h3>
      {movement ? (
        <>
          <PoseEditor name={name || of} movement={movement} onChange={onChange} onSettle={onSettle} />
          <Button small kind="quiet" aria-label={`${of}: ${o('drawDrop')}`} onClick={() => onChange(null)}>{o('drawDrop')}</Button>
        </>
      ) : <Begin of={of} onBegin={onChange} />}
    </section>
  );
}

function Begin({ of, onBegin }: { of: string; onBegin: (movement: Movement) => void }) {
  const [start, setStart] = useState<Start>('standing');
  const [copied, setCopied] = useState<[string, string] | null>(null);
  const { busy, failure, run } = useWrite();
  const begin = async () => {
    const [code, variant, key = null] = start === 'copy' ? (copied ?? []) : STARTS[start];
    if (!code || !variant) return;
    const movement = await run(() => readPoses(code, variant, key));
    if (movement) onBegin(start === 'copy' ? movement : { ...movement, working: [] });
  };
  return (
    <>
      <p class="soft">{o('drawNone')}</p>
      <div class="ed-fields">
        <Select label={`${of}: ${o('drawFrom')}`} value={start} options={CHOICES.map((value) => ({ value, label: o(`start_${value}`) }))} onChange={setStart} />
        {start === 'copy' && <Copied chosen={copied} onChoose={setCopied} />}
      </div>
      <p><Button small aria-label={`${of}: ${o('drawBegin')}`} onClick={() => void begin()}>{busy ? o('loading') : o('drawBegin')}</Button></p>
      <div role="alert">{failure && <p class="error">{failureWords(failure)}</p>}</div>
    </>
  );
}

/** Any variant of the library that is drawn. */
function Copied({ chosen, onChoose }: { chosen: [string, string] | null; onChoose: (chosen: [string, string]) => void }) {
  const { data } = useResource<Items<Entry>>('/exercises');
  const drawn = (data?.items ?? []).filter((entry) => !entry.own && entry.ladder.some((rung) => rung.drawn));
  const entry = drawn.find(({ code }) => code === chosen?.[0]) ?? drawn[0];
  const rungs = entry?.ladder.filter((rung) => rung.drawn) ?? [];
  if (!entry) return <p role="status">{o('loading')}</p>;
  if (!chosen) queueMicrotask(() => onChoose([entry.code, rungs[0]!.variant]));
  return (
    <>
      <Select label={o('drawFromExercise')} value={entry.code} options={drawn.map(({ code, name }) => ({ value: code, label: name }))} onChange={(code) => onChoose([code, drawn.find((one) => one.code === code)!.ladder.find((rung) => rung.drawn)!.variant])} />
      <Select label={o('drawFromVariant')} value={chosen?.[1] ?? ''} options={rungs.map(({ variant, name }) => ({ value: variant, label: name }))} onChange={(variant) => onChoose([entry.code, variant])} />
    </>
  );
}
