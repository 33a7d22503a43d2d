import { signal } from '@preact/signals';
import type { LocalDate } from '../../shared/dates';

/** A day that a reason leads to: the timeline opens, reads on until it has that day, and shows it. Null when there is nothing to look for. */
export const wantedDay = signal<LocalDate | null>(null);
