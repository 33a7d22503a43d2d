import { expect, it } from 'vitest';
import { elapsedMs, secondsOf, STILL } from './watch';

it('counts from start to now, then to the stop, and never past the time of the test', () => {
  expect(elapsedMs(STILL, 5000, null)).toBe(0);
  expect(elapsedMs({ startedAt: 1000, stoppedAt: null }, 13_300, null)).toBe(12_300);
  expect(elapsedMs({ startedAt: 1000, stoppedAt: 13_300 }, 99_000, null)).toBe(12_300);
  expect(elapsedMs({ startedAt: 1000, stoppedAt: null }, 31_000, 30)).toBe(30_000);
  expect(elapsedMs({ startedAt: 1000, stoppedAt: null }, 32_000, 30)).toBe(30_000);
});

it('takes tenths of a second', () => {
  expect(secondsOf(12_349)).toBe(12.3);
  expect(secondsOf(12_350)).toBe(12.4);
});
