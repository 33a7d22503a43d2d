import { afterEach, describe, expect, it, vi } from 'vitest';
import { setUnitSystem } from '../../shared/units';
import type { Trip } from '../api/types';
import { bodyOf, cutOf, emptyLeg, formOf, nextDay, sentAgain } from './form';
import { problemWords } from './LegFields';

vi.stubGlobal('navigator', { languages: ['en-GB'] });
vi.stubGlobal('document', { documentElement: { lang: 'en' } });

const trip: Trip = {
  name: null, starts_on: null, pack_kg: 8.26, ground: 'dirt_road', version: 1, saved_at: null, saved_by: null, slopes: [],
  legs: [
    { name: 'Up', day: 1, distance_km: 12.345, ascent_m: 812.4, descent_m: 97, pack_kg: null, from_file: null },
    { name: '', day: 2, distance_km: 9, ascent_m: null, descent_m: null, pack_kg: 4, from_file: null },
  ],
};
afterEach(() => setUnitSystem('metric'));

it('says the most of a pack in the chosen unit', () => {
  expect(problemWords('too_much', 'mass')).toBe('At most 60 kg.');
  setUnitSystem('us');
  expect(problemWords('too_much', 'mass')).toBe('At most 132 lb.');
});

describe('a trip as typed', () => {
  it('comes back as it was, to the last digit, in either unit, when nothing was touched', () => {
    expect(bodyOf(formOf(trip)).body).toEqual(sentAgain(trip));
    setUnitSystem('us');
    expect(bodyOf(formOf(trip)).body).toEqual(sentAgain(trip));
  });
  it('takes what was typed, in the chosen unit', () => {
    setUnitSystem('us');
    const leg = { ...emptyLeg(1), distance: { text: '10', si: null }, ascent: { text: '1000', si: null }, descent: { text: '0', si: null } };
    expect(bodyOf({ ...formOf(trip), legs: [leg] }).body?.legs[0]).toMatchObject({ distance_km: 16.09344, ascent_m: 304.8, descent_m: 0, pack_kg: null });
  });
  it('names each field that is wrong', () => {
    const odd = (text: string) => ({ text, si: null });
    const legs = [
      { ...emptyLeg(2), distance: odd(''), ascent: odd('100'), pack: odd('61') },
      { ...emptyLeg(1), distance: odd('1'), ascent: odd('900'), descent: odd('900') },
      { ...emptyLeg(3), day: 'x', distance: odd('101') },
    ];
    expect(bodyOf({ ...formOf(trip), legs })).toEqual({
      body: null,
      problems: {
        'legs.0.distance': 'missing', 'legs.0.descent': 'both', 'legs.0.pack': 'too_much',
        'legs.1.ascent': 'steeper', 'legs.1.day': 'backwards', 'legs.2.distance': 'too_much', 'legs.2.day': 'missing',
      },
    });
  });
  it('asks for a pack rather than count none, unless every leg has one of its own', () => {
    const blank = { text: ' ', si: null };
    const legs = formOf(trip).legs;
    expect(bodyOf({ ...formOf(trip), pack: blank })).toEqual({ body: null, problems: { pack: 'missing' } });
    expect(bodyOf({ ...formOf(trip), pack: blank, legs: legs.slice(1) }).problems).toEqual({});
    expect(bodyOf({ ...formOf(trip), pack: { text: '0', si: null } }).body?.pack_kg).toBe(0);
  });
  it('begins a new trip without a pack, to be asked for', () => expect(formOf({ ...trip, version: 0, pack_kg: 0, legs: [] }).pack.text).toBe(''));
  it('goes on with the day after the last', () => expect([nextDay([]), nextDay(formOf(trip).legs)]).toEqual([1, 3]));
});

it('says how a file is cut, or that it cannot be told', () => {
  expect([cutOf('file', ''), cutOf('days', '5'), cutOf('places', '12,5 25')]).toEqual(['', 'days=5', 'cut_km=12.5&cut_km=25']);
  expect([cutOf('days', '0'), cutOf('days', '2.5'), cutOf('places', ''), cutOf('places', '12 far')]).toEqual([null, null, null, null]);
});
