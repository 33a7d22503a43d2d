/** The course of a hold: get ready, hold, change sides, hold. A pure function of the time since the start. */
import type { Sides } from '../../shared/program';

/** The 3-2-1 before a hold. House value, seconds. */
export const LEAD_S = 3;
/** Time to change sides, its last three seconds counted down. House value, seconds. */
export const CHANGE_S = 8;

export type HoldStep = 'ready' | 'hold' | 'change';
export interface HoldPart {
  step: HoldStep;
  /** Which side is held, or comes next; null where both are done together. */
  side: 'right' | 'left' | null;
  seconds: number;
}
export interface HoldMoment {
  part: HoldPart;
  index: number;
  seconds_left: number;
}

/** The parts of one set. "right" first, as the card says. */
export function holdParts(hold_s: number, sides: Sides): HoldPart[] {
  if (sides === 'both') return [{ step: 'ready', side: null, seconds: LEAD_S }, { step: 'hold', side: null, seconds: hold_s }];
  return [
    { step: 'ready', side: 'right', seconds: LEAD_S },
    { step: 'hold', side: 'right', seconds: hold_s },
    { step: 'change', side: 'left', seconds: CHANGE_S },
    { step: 'hold', side: 'left', seconds: hold_s },
  ];
}

export const holdLength = (parts: readonly HoldPart[]): number => parts.reduce((sum, part) => sum + part.seconds, 0);

/** Where one is after `elapsed_ms`; null when the set is over. */
export function holdAt(parts: readonly HoldPart[], elapsed_ms: number): HoldMoment | null {
  let begins = 0;
  for (const [index, part] of parts.entries()) {
    const ends = begins + part.seconds * 1000;
    if (elapsed_ms < ends) return { part, index, seconds_left: Math.ceil((ends - elapsed_ms) / 1000) };
    begins = ends;
  }
  return null;
}
