import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CODE_LENGTH, groupCode, normalizeCode } from './code';
import { applyChanges, NO_FEED } from './feed';
import { entry } from './testing/phone';
import { backoff, BATCH_BYTES, LONGEST_DELAY_MS, nextBatch, retryAfter } from './sync';
import { uuid7 } from './uuid7';

describe('uuid7', () => {
  it('is laid out as the example of RFC 9562, appendix A.6', () => {
    const random = Uint8Array.from('0000000000000cc318c4dc0c0c07398f'.match(/../g)!, (hex) => parseInt(hex, 16));
    expect(uuid7(0x017f22e279b0, (bytes) => (bytes.set(random), bytes))).toBe('017f22e2-79b0-7cc3-98c4-dc0c0c07398f');
  });
  it('sorts by time and has version 7, whatever the clock says', () => {
    fc.assert(
      fc.property(fc.nat(2 ** 31), fc.integer({ min: 1, max: 1e6 }), (at, later) => {
        const [a, b] = [uuid7(at * 1000), uuid7(at * 1000 + later)];
        expect(a < b).toBe(true);
        expect(a).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
      }),
    );
    expect(uuid7(-5).startsWith('00000000-0000-7')).toBe(true);
    expect(uuid7(2 ** 60).startsWith('ffffffff-ffff-7')).toBe(true);
  });
});

describe('pairing codes', () => {
  const code = '0123456789ABCDEFGHJKMNPQRS';
  it('are read as typed, pasted, grouped or as a link', () => {
    expect(code).toHaveLength(CODE_LENGTH);
    const forms = [code, code.toLowerCase(), groupCode(code), code.replace(/(..)/g, '$1 '), `https://steadfoot.example/app/#pair=${code}`, `#pair=${groupCode(code)}`];
    for (const form of forms) expect(normalizeCode(form)).toBe(code);
  });
  it('take O for 0, and I and L for 1', () => {
    expect(normalizeCode(code.replace('0', 'o').replace('1', 'l'))).toBe(code);
    expect(normalizeCode(code.replace('1', 'I'))).toBe(code);
  });
  it('are refused when too short, too long, or with a letter that no code has', () => {
    for (const wrong of ['', code.slice(1), `${code}0`, `${code.slice(1)}U`, 'https://steadfoot.example/app/', `#pair=%E0%A4%A`]) {
      expect(normalizeCode(wrong)).toBeNull();
    }
  });
});

describe('batches', () => {
  const log = Array.from({ length: 1250 }, (_, i) => ({ ...entry(i + 1), seq: i + 1 }));
  it('hold at most the limit and begin after what is held', () => {
    expect(nextBatch(log, 0).map((event) => event.seq)).toEqual(log.slice(0, 500).map((event) => event.seq));
    expect(nextBatch(log, 1240)).toHaveLength(10);
    expect(nextBatch(log, 1250)).toEqual([]);
  });
  it('hold at most 256 kB, but always one', () => {
    const heavy = log.map((event) => ({ ...event, body: { text: 'ü'.repeat(50_000) } }));
    expect(nextBatch(heavy, 0)).toHaveLength(2);
    expect(nextBatch([{ ...heavy[0]!, body: { text: 'x'.repeat(BATCH_BYTES * 2) } }, heavy[1]!], 0)).toHaveLength(1);
  });
});

/** A small generator of numbers from 0 to 1 that can be run again. */
function mulberry(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

describe('waiting', () => {
  it('stays between nothing and 15 minutes, and never undercuts what was asked', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1000 }), fc.double({ min: 0, max: 1, noNaN: true }), fc.nat(LONGEST_DELAY_MS), (failures, random, asked) => {
        const wait = backoff(failures, random, asked);
        expect(wait).toBeGreaterThanOrEqual(asked);
        expect(wait).toBeLessThanOrEqual(LONGEST_DELAY_MS);
      }),
    );
  });
  it('spreads 500 phones after ten minutes without a practice: none hammers, all are back within the longest wait', () => {
    const random = mulberry(20261128);
    const [back, end] = [600_000, 600_000 + LONGEST_DELAY_MS];
    const calls = Array.from({ length: 500 }, () => {
      const own: number[] = [];
      for (let at = 0, failures = 0; ; ) {
        own.push(at);
        if (at >= back) return own;
        at += backoff((failures += 1), random());
      }
    });
    const after = calls.map((own) => own.at(-1)!);
    const busiest = Math.max(...Array.from({ length: 900 }, (_, s) => after.filter((at) => at >= back + s * 1000 && at < back + (s + 1) * 1000).length));
    expect(Math.max(...after)).toBeLessThanOrEqual(end);
    expect(busiest).toBeLessThan(25);
    expect(Math.max(...calls.map((own) => own.length))).toBeLessThan(40);
  });
  it('reads Retry-After as seconds or as a date', () => {
    const now = Date.parse('2026-11-25T10:00:00Z');
    expect(retryAfter('30', now)).toBe(30_000);
    expect(retryAfter('Wed, 25 Nov 2026 10:01:00 GMT', now)).toBe(60_000);
    expect(retryAfter('Wed, 25 Nov 2026 09:00:00 GMT', now)).toBe(0);
    for (const nonsense of [null, '', 'soon']) expect(retryAfter(nonsense, now)).toBe(0);
  });
});

describe('what the practice sends', () => {
  const change = (number: number, kind: string, body: Record<string, unknown>) => ({ number, kind, at: '', body });
  const changes = [
    change(1, 'practice', { name: 'Thornwater' }), change(2, 'program', { number: 1 }), change(3, 'program', { number: 2 }),
    change(4, 'message', { id: 'm1' }), change(5, 'flag_answer', { flag_id: 'f1', decided_at: 'd' }), change(6, 'something_new', {}),
  ];
  it('replaces what there is one of, adds up what there are many of, and passes over what it does not know', () => {
    const feed = applyChanges(NO_FEED, changes);
    expect(feed).toMatchObject({ practice: { name: 'Thornwater' }, program: { number: 2 }, olderPrograms: [{ number: 1 }], messages: [{ id: 'm1' }], answers: [{ flag_id: 'f1' }] });
  });
  it('changes nothing when it comes again', () => {
    const feed = applyChanges(NO_FEED, changes);
    expect(applyChanges(feed, changes)).toEqual(feed);
  });
});
