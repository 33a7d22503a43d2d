import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseNumber } from './numbers';
import { distance, height, mass, parseQuantity, toShown, toSi } from './units';

describe('units', () => {
  it('are shown in the chosen system, rounded for display', () => {
    expect([distance(11.04, 'metric'), distance(11, 'us')]).toEqual(['11 km', '6.8 mi']);
    expect([height(523, 'metric'), height(520, 'us')]).toEqual(['520 m', '1,700 ft']);
    expect([mass(6.2, 'metric'), mass(6, 'us')]).toEqual(['6 kg', '13 lb']);
  });
  it('return what was typed: 20 lb never comes back as 19.8', () => {
    fc.assert(
      fc.property(fc.constantFrom('distance', 'height', 'mass'), fc.nat(2000), (quantity, typed) => {
        const shown = quantity === 'height' ? typed * 50 : typed;
        expect(toShown(quantity, toSi(quantity, shown, 'us'), 'us')).toBe(shown);
      }),
    );
  });
  it('are read with a point or a comma, and refuse what is no number', () => {
    expect(parseQuantity('distance', '7,5', 'metric')).toBe(7.5);
    expect(parseQuantity('mass', ' 20 ', 'us')).toBeCloseTo(9.072, 3);
    for (const text of ['', 'x', '1e3', '-2', '1.2.3', '1,000,000', 'Infinity']) expect(parseQuantity('mass', text, 'metric')).toBeNull();
    expect(parseNumber('-3.5')).toBe(-3.5);
  });
});
