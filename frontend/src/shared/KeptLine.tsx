import { s } from './words/shared';

export interface KeptState {
  /** Sets or entries kept on this phone in the span the page speaks of, and how many of them the practice holds. */
  saved: number;
  received: number;
  /** When the practice last answered, in words: "18:09" or "Wed 18:09". Null when it never did. */
  lastReceived: string | null;
  practice: string;
  practitioner: string;
  /** Entries received but not understood. */
  refused: number;
  /** True while the last tap could not be stored. */
  full: boolean;
  /** Whole days since anything was sent, while something waits. */
  silentDays: number;
}

/** From this many days on, silence is named instead of "when there is signal". House value, days. */
export const LONG_SILENCE_DAYS = 3;

function Second(state: KeptState) {
  const { saved, received, lastReceived, practice, silentDays } = state;
  if (saved === 0) return null;
  if (received === saved && lastReceived) return <span class="whole">{s('keptAll', { practice, time: lastReceived })}</span>;
  if (silentDays >= LONG_SILENCE_DAYS) return <span class="whole">{s('keptSilent', { n: silentDays })}</span>;
  if (received === 0 || !lastReceived) return <span class="whole">{s('keptNone')}</span>;
  return (
    <>
      <b>{s('keptOfThem', { n: received })}</b>
      <span>{s('keptSome', { practice, time: lastReceived })}</span>
    </>
  );
}

/** What is saved and what has arrived: always under the title, never a toast. Five wordings. */
export function KeptLine(state: KeptState) {
  return (
    <div class="kept">
      <div class="kept whole" role="status">
        <b>{s('keptSets', { n: state.saved })}</b>
        <span>{s('keptOnPhone')}</span>
        <Second {...state} />
        {state.refused > 0 && <span class="whole">{s('keptRefused', { n: state.refused, practitioner: state.practitioner })}</span>}
      </div>
      <div class="whole" role="alert">{state.full && s('keptFull')}</div>
    </div>
  );
}
