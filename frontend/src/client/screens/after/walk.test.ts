import { afterEach, describe, expect, it } from 'vitest';
import { setUnitSystem } from '../../../shared/units';
import { walk } from '../../testing/sample';
import { readWalk, typedAsPlanned, typedFrom } from './walk';

const TODAY = '2026-10-07';
const typed = { ...typedFrom(null, null, TODAY), distance: '8,5', ascent: '300', descent: '280', pack: '0', minutes: '150' };
afterEach(() => setUnitSystem('metric'));

describe('a walk as typed', () => {
  it('becomes an entry, decimal comma and all; the day is said only when it is another', () => {
    expect(readWalk(typed, TODAY)).toEqual({ errors: {}, body: { distance_km: 8.5, ascent_m: 300, descent_m: 280, pack_kg: 0, minutes: 150 } });
    expect(readWalk({ ...typed, effort: 6, day: '2026-10-05' }, TODAY).body).toMatchObject({ effort: 6, day: '2026-10-05' });
  });
  it('names each field that is wrong', () => {
    const read = readWalk({ ...typed, distance: 'far', ascent: '10001', minutes: '12.5', day: '2026-10-08' }, TODAY);
    expect(read).toEqual({ errors: { distance: 'missing', ascent: 'too_much', minutes: 'missing', day: 'missing' }, body: null });
    expect(readWalk({ ...typed, minutes: '1441' }, TODAY).errors).toEqual({ minutes: 'missing' });
  });
  it('is kept in km, m and kg whatever it was typed in', () => {
    setUnitSystem('us');
    expect(readWalk({ ...typed, distance: '5', ascent: '1000', descent: '1000', pack: '20' }, TODAY).body).toMatchObject({ distance_km: 8.04672, ascent_m: 304.8, pack_kg: 9.071847 });
  });
  it('opens with the plan', () => {
    if (walk.kind !== 'walk') throw new Error('the sample has a walk');
    expect(typedAsPlanned(walk, TODAY)).toEqual({ distance: '8', ascent: '300', descent: '300', pack: '6', minutes: '150', effort: null, day: TODAY });
  });
});
