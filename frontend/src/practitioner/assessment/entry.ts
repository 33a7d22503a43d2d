/** What is typed for a test and what it becomes: pure. */
import { parseNumber } from '../../shared/numbers';
import type { TestEntry } from '../api/calls';
import type { Test } from '../api/types';
import type { FieldErrors } from '../parts/ErrorSummary';
import { t } from '../words';

export interface Typed { value: string; side: 'left' | 'right' | null; taken_on: string; how: string; note: string }
export const NOTHING_TYPED: Typed = { value: '', side: null, taken_on: '', how: '', note: '' };

export function entryErrors(test: Test, { value, side }: Typed): FieldErrors {
  const errors: FieldErrors = {};
  const { low, high } = test.range;
  const number = parseNumber(value);
  if (test.sides && !side) errors.side = t('tstSideMissing');
  if (number === null || number < low || number > high) errors.value = t('tstValueOdd', { low, high, unit: test.unit });
  return errors;
}

export const entryOf = (test: Test, { value, side, taken_on, how, note }: Typed): TestEntry => ({
  code: test.code,
  value: parseNumber(value) ?? 0,
  side: test.sides ? side : null,
  taken_on: taken_on || null,
  protocol: how.trim() ? { how: how.trim() } : {},
  note: note.trim(),
});
