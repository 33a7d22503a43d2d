import { expect, it } from 'vitest';
import { CHANGE_S, holdAt, holdLength, holdParts, LEAD_S } from './hold';

it('counts in, holds, changes sides and holds again', () => {
  const parts = holdParts(30, 'each');
  expect(parts.map(({ step, side }) => `${step} ${side}`)).toEqual(['ready right', 'hold right', 'change left', 'hold left']);
  expect(holdLength(parts)).toBe(LEAD_S + 30 + CHANGE_S + 30);
  expect(holdAt(parts, 0)).toMatchObject({ index: 0, seconds_left: LEAD_S });
  expect(holdAt(parts, LEAD_S * 1000)).toMatchObject({ index: 1, seconds_left: 30 });
  expect(holdAt(parts, (LEAD_S + 30) * 1000)).toMatchObject({ part: { step: 'change', side: 'left' }, seconds_left: CHANGE_S });
  expect(holdAt(parts, holdLength(parts) * 1000 - 1)).toMatchObject({ index: 3, seconds_left: 1 });
  expect(holdAt(parts, holdLength(parts) * 1000)).toBeNull();
});

it('has one hold where both sides work together', () => {
  expect(holdParts(45, 'both').map(({ step, side, seconds }) => [step, side, seconds])).toEqual([['ready', null, LEAD_S], ['hold', null, 45]]);
});
