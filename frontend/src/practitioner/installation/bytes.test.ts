import { expect, it } from 'vitest';
import { bytes } from './bytes';

it('tells a size in the unit that leaves one to three digits before the point', () => {
  expect([0, 999, 1000, 1_234_000, 98_765_432_100, 5e12, 5e15].map(bytes)).toEqual(
    ['0 byte', '999 byte', '1 kB', '1.23 MB', '98.8 GB', '5 TB', '5,000 TB'],
  );
});
