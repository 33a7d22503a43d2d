import { useState } from 'preact/hooks';
import { useResource } from '../api/resource';
import type { Items } from '../api/types';
import { Button } from '../form/Button';
import { Select } from '../form/Field';
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
  const [picked, setPicked] = useState<readonly [string, string] | null>(null);
  const drawn = useDrawn();
  const first = drawn[0] && firstOf(drawn[0]);
  const copied = picked ?? first;
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
        {start === 'copy' && (copied ? <Copied of={of} drawn={drawn} chosen={copied} onChoose={setPicked} /> : <p role="status">{o('loading')}</p>)}
      </div>
      <p><Button small aria-label={`${of}: ${o('drawBegin')}`} onClick={() => void begin()}>{busy ? o('loading') : o('drawBegin')}</Button></p>
      <div role="alert">{failure && <p class="error">{failureWords(failure)}</p>}</div>
    </>
  );
}

interface Drawn {
  code: string;
  name: string;
  rungs: Entry['ladder'];
}
const firstOf = ({ code, rungs }: Drawn): [string, string] => [code, rungs[0]?.variant ?? ''];

/** Every exercise of the library with its drawn variants. */
function useDrawn(): Drawn[] {
  const { data } = useResource<Items<Entry>>('/exercises');
  const all = (data?.items ?? []).filter((entry) => !entry.own).map(({ code, name, ladder }) => ({ code, name, rungs: ladder.filter((rung) => rung.drawn) }));
  return all.filter(({ rungs }) => rungs.length > 0);
}

interface CopiedProps {
  of: string;
  drawn: readonly Drawn[];
  chosen: readonly [string, string];
  onChoose: (chosen: readonly [string, string]) => void;
}

function Copied({ of, drawn, chosen, onChoose }: CopiedProps) {
  const [code, variant] = chosen;
  const entry = drawn.find((one) => one.code === code);
  const choose = (next: string) => {
    const found = drawn.find((one) => one.code === next);
    if (found) onChoose(firstOf(found));
  };
  return (
    <>
      <Select label={`${of}: ${o('drawFromExercise')}`} value={code} options={drawn.map((one) => ({ value: one.code, label: one.name }))} onChange={choose} />
      <Select label={`${of}: ${o('drawFromVariant')}`} value={variant} options={(entry?.rungs ?? []).map((rung) => ({ value: rung.variant, label: rung.name }))} onChange={(next) => onChoose([code, next])} />
    </>
  );
}
