import { s } from '../words/shared';
import { Tick, Walker } from './marks';
import { outlineAt } from './outlines';

export type StoneState = 'todo' | 'next' | 'laid' | 'left-out';

/** Only the drawing, for a page that explains the marks. */
export function StoneShape({ index }: { index: number }) {
  const outline = outlineAt(index);
  return (
    <svg class="rock" viewBox="0 0 76 62" aria-hidden="true">
      <path class="lip" d={outline} transform="translate(0 4.5)" />
      <path class="body" d={outline} />
      <path class="grain" d="M58 46l6-7M52 49l9-10.5M46.5 50l5-5.5" />
    </svg>
  );
}

function Inside({ state, top, under }: { state: StoneState; top: string; under: string }) {
  if (state === 'laid') return <Tick />;
  const [first, second] = state === 'left-out' ? [s('stoneLeft'), s('stoneOut')] : [top, under];
  return (
    <>
      <b>{first}</b> <span>{second}</span>
    </>
  );
}

interface StoneProps {
  /** Place in the session; decides the outline. */
  index: number;
  state: StoneState;
  /** Short dose: "8" over "each"; see `stoneLabel` in dose.ts. */
  top: string;
  under: string;
  /** Exercise, round and dose as one hears it; the state is added here. */
  spoken: string;
  onPress: () => void;
}

/** A set: a tap lays the stone, a second tap takes it up again. */
export function Stone({ index, state, top, under, spoken, onPress }: StoneProps) {
  return (
    <button type="button" class={`stone ${state}`} aria-pressed={state === 'laid'} aria-label={`${spoken}, ${s(STATE_WORDS[state])}`} onClick={onPress}>
      {state === 'next' && <Walker class="here" />}
      <StoneShape index={index} />
      <span class="in">
        <Inside state={state} top={top} under={under} />
      </span>
    </button>
  );
}

const STATE_WORDS = { todo: 'stoneNotDone', next: 'stoneNext', laid: 'stoneDone', 'left-out': 'stoneLeftOut' } as const;
