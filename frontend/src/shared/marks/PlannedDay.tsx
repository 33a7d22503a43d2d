import { outlineAt } from './outlines';

export type PlannedDayState = 'done' | 'partly' | 'partly_unheard' | 'missed' | 'not_heard' | 'open' | 'to_come' | 'left_out';

const CLASS: Record<PlannedDayState, string> = {
  done: 'solid', partly: 'part', partly_unheard: 'part dotted', missed: 'missed', not_heard: 'unheard', open: 'open', to_come: 'coming', left_out: 'out',
};

/** A planned day as a small stone. A mark, not a button: the word stands beside it or in the row's text. */
export function PlannedDay({ state, index = 0 }: { state: PlannedDayState; index?: number }) {
  return (
    <svg class="planned-day" viewBox="0 0 76 62" aria-hidden="true">
      <path class={CLASS[state]} d={outlineAt(index)} />
      {(state === 'partly' || state === 'partly_unheard') && <path class="half" d="M6 33H72C72 46 60 54 40 55S6 48 6 33Z" />}
      {state === 'missed' && <path class="bar" d="M4 58 72 2" />}
      {state === 'left_out' && <path class="dash" d="M22 31H54" />}
    </svg>
  );
}
