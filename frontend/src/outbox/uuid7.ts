/** UUID version 7 (RFC 9562): 48 bits of Unix milliseconds, then random bits. Ids made later sort later. */
export type RandomBytes = (bytes: Uint8Array<ArrayBuffer>) => Uint8Array<ArrayBuffer>;

const systemRandom: RandomBytes = (bytes) => crypto.getRandomValues(bytes);

/** `milliseconds` since 1970, 0 to 2^48 - 1; a clock outside that is held at the nearest end rather than refused. */
export function uuid7(milliseconds: number, random: RandomBytes = systemRandom): string {
  const bytes = random(new Uint8Array(16));
  let time = Math.min(Math.max(Math.trunc(milliseconds), 0), 2 ** 48 - 1);
  for (let i = 5; i >= 0; i -= 1) {
    bytes[i] = time % 256;
    time = Math.floor(time / 256);
  }
  bytes[6] = 0x70 | ((bytes[6] as number) & 0x0f);
  bytes[8] = 0x80 | ((bytes[8] as number) & 0x3f);
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
}
