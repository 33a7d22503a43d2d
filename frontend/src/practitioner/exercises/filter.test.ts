import { describe, expect, it } from 'vitest';
import { missingKit } from './entry';
import { ANY, find, fitting, qualitiesOf, regionsOf } from './filter';
import { STEP_DOWN } from '../editor/testing/arbitrary';

const bridge = { ...STEP_DOWN, code: 'hip-bridge', name: 'Hip bridge', trains: ['hip_control'], loads: ['hip'], ladder: STEP_DOWN.ladder.slice(0, 1) };
const names = (filter: Partial<typeof ANY>) => find([STEP_DOWN, bridge], { ...ANY, ...filter }).map((entry) => entry.name);

describe('finding exercises', () => {
  it('goes by words of the name in any order, with or without a hyphen', () => {
    expect(names({})).toEqual(['Hip bridge', 'Step-down']);
    expect(names({ text: 'down  step' })).toEqual(['Step-down']);
    expect(names({ text: 'STEP-D' })).toEqual(['Step-down']);
    expect(names({ text: 'moon' })).toEqual([]);
  });

  it('goes by the term of the trade where the name is in the words of the client', () => {
    const lift = { ...bridge, code: 'hip-abduction', name: 'Side leg lift' };
    const found = (text: string) => find([STEP_DOWN, lift], { ...ANY, text }).map((entry) => entry.name);
    expect(found('abduction')).toEqual(['Side leg lift']);
    expect(found('side leg')).toEqual(['Side leg lift']);
  });

  it('goes by what is trained and by what is spared', () => {
    expect(names({ trains: 'hip_control' })).toEqual(['Hip bridge']);
    expect(names({ spares: 'hip' })).toEqual(['Step-down']);
    expect(qualitiesOf([STEP_DOWN, bridge])).toEqual(['descent_control', 'hip_control']);
    expect(regionsOf([STEP_DOWN, bridge])).toEqual(['hip', 'knee']);
  });

  it('goes by the kit in the house: one variant that fits is enough', () => {
    expect(names({ kit: [] })).toEqual(['Step-down']);
    expect(fitting(STEP_DOWN, ['stairs']).map((rung) => rung.variant)).toEqual(['step-15', 'hold']);
  });
});

describe('missing kit', () => {
  it('is what is neither there nor stood in for', () => {
    expect(missingKit(['wall', 'step', 'pillow', 'mat', 'band'], ['stairs', 'towel'])).toEqual(['band']);
    expect(missingKit(['stairs'], ['step'])).toEqual(['stairs']);
  });
});
