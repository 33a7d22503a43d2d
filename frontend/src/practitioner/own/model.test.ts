import { describe, expect, it } from 'vitest';
import { addKey, bodyOf, emptyForm, emptyRung, keyNames, nextVariant, removeKey, withLadder, withPoses, type Movement } from './model';

const still = { views: ['side'], seconds: 2, working: [], contacts: ['foot.R'], poster: 'up', strip: ['up'], base: {}, keys: { up: { t: 0 } } } as unknown as Movement;

describe('key poses', () => {
  it('are evenly apart on even hundredths, whatever is added or removed', () => {
    let movement = still;
    for (let n = 2; n <= 9; n += 1) {
      movement = addKey(movement, 'up').movement;
      const times = keyNames(movement).map((name) => movement.keys[name]!.t);
      expect(times[0]).toBe(0);
      expect(times.at(-1)).toBe(1);
      expect(new Set(times).size).toBe(n);
      for (const time of times) expect(Math.abs(time * 50 - Math.round(time * 50))).toBeLessThan(1e-9);
      expect(movement.strip.length).toBe(Math.min(n, 4));
      for (const name of movement.strip) expect(movement.keys[name]).toBeDefined();
    }
    while (keyNames(movement).length > 1) movement = removeKey(movement, keyNames(movement)[0]!);
    expect(Object.values(movement.keys).map((key) => key.t)).toEqual([0]);
    expect(movement.keys[movement.poster]).toBeDefined();
  });
});

describe('the ladder', () => {
  it('gives a new variant a code that none has', () => {
    expect(nextVariant([])).toBe('v1');
    expect(nextVariant([emptyRung('v3'), emptyRung('v1')])).toBe('v4');
  });

  it('loses a drawing with its variant, and takes the sides of the easiest', () => {
    const form = withPoses(withLadder(emptyForm(), [emptyRung('v1'), emptyRung('v2')]), 'v2', still);
    const next = withLadder(form, [{ ...emptyRung('v1'), sides: 'each' }]);
    expect(next.poses).toEqual({});
    expect(next.text.sides).toBe('each');
  });
});

it('sends no line that was left empty and need not be there', () => {
  const { text } = emptyForm();
  const sent = bodyOf({ text: { ...text, cues: [' a ', '', 'c', ''], cautions: ['x', ' '] }, poses: {} }).text;
  expect(sent.cues).toEqual(['a', '', 'c']);
  expect(sent.cautions).toEqual(['x']);
});
