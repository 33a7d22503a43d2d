import type { PlannedDayState } from '../../shared/marks/PlannedDay';
import { s } from '../../shared/words/shared';
import type { PlannedShort } from '../api/types';

const WORDS = {
  done: 'dayDone', partly: 'dayPartly', partly_unheard: 'dayPartlyUnheard', missed: 'dayMissed',
  not_heard: 'dayNotHeard', open: 'dayOpen', to_come: 'dayToCome', left_out: 'dayLeftOut',
} as const;

/** Ticked in part while the phone may still report more is drawn with a dotted edge. */
export function markOf({ status, settled }: Pick<PlannedShort, 'status' | 'settled'>): PlannedDayState {
  return status === 'partly' && !settled ? 'partly_unheard' : status;
}
export const markWords = (state: PlannedDayState): string => s(WORDS[state]);
