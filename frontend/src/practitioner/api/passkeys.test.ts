import { expect, it } from 'vitest';
import { toBytes, toText } from './passkeys';

it('writes bytes as URL-safe base 64 without padding, and reads them back', () => {
  for (const bytes of [[], [0], [251, 255], [255, 239, 190], Array.from({ length: 256 }, (_, i) => i)]) {
    const text = toText(new Uint8Array(bytes).buffer);
    expect(text).toMatch(/^[A-Za-z0-9_-]*$/);
    expect([...toBytes(text)]).toEqual(bytes);
  }
  expect(toText(new Uint8Array([251, 255]).buffer)).toBe('-_8');
});
