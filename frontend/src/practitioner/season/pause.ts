/** A pause that a person's days or flags tell of, after which the season may want to be planned again. Pure. */
import { addDays, type LocalDate } from '../../shared/dates';
import type { Flag, SessionItem } from '../api/types';
import type { Pause } from './types';

export interface Noticed {
  reason: Pause;
  since: LocalDate;
}
const FORTNIGHT_DAYS = 14;
/** Two sessions at least: one that was missed in a fortnight of few is no pause. House value. */
const MISSED_MIN = 2;

/** Pain under an open flag before all; else a fortnight of which every session is known to be missed. What was not heard is not known. */
export function pauseNoticed(days: readonly SessionItem[], flags: readonly Flag[], today: LocalDate): Noticed | null {
  const pain = flags.filter(({ rule, status }) => status === 'open' && rule.startsWith('pain'));
  const first = pain.map(({ since }) => since).sort()[0];
  if (first) return { reason: 'pain', since: first };
  const lately = days.filter(({ date }) => date < today && date >= addDays(today, -FORTNIGHT_DAYS));
  if (lately.length < MISSED_MIN || lately.some(({ status }) => status !== 'missed')) return null;
  return { reason: 'missed_fortnight', since: lately.map(({ date }) => date).sort()[0] as LocalDate };
}
