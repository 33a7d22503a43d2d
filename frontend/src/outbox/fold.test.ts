import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Event } from './events';
import { foldPain, foldSessions, type SessionState } from './fold';

interface Case { name: string; events: Event[]; expected: SessionState[] }
// The server's tests read the same file.
const { cases } = JSON.parse(readFileSync(new URL('../../../tests/vectors/fold.json', import.meta.url), 'utf8')) as { cases: Case[] };

describe('the vectors shared with the server', () => {
  it.each(cases)('$name', ({ events, expected }) => {
    expect(foldSessions(events)).toEqual(expected);
    expect(foldSessions([...events].reverse())).toEqual(expected);
  });
});

const SETS = fc.record({ planned_id: fc.constantFrom('2026-10-05.1', '2026-10-06.1'), prescription: fc.constantFrom('p1', 'p2'), round: fc.integer({ min: 1, max: 3 }) });
const KINDS = fc.oneof(
  fc.record({ kind: fc.constantFrom('set_ticked' as const, 'set_unticked' as const), body: SETS }),
  fc.record({ kind: fc.constant('set_left_out' as const), body: SETS.chain((set) => fc.constantFrom('pain', 'no_time').map((reason) => ({ ...set, reason }))) }),
  fc.record({ kind: fc.constant('session_finished' as const), body: fc.record({ planned_id: fc.constant('2026-10-05.1'), minutes: fc.nat(1440), effort: fc.nat(10) }) }),
  fc.record({ kind: fc.constant('variant_swapped' as const), body: fc.record({ planned_id: fc.constant('2026-10-05.1'), prescription: fc.constantFrom('p1', 'p2'), to_variant: fc.constantFrom('a', 'b') }) }),
  fc.record({ kind: fc.constant('entry_withdrawn' as const), body: fc.record({ event_id: fc.nat(20).map((n) => `id-${n}`) }) }),
);
const LOG = fc.array(KINDS, { maxLength: 20 }).map((made) =>
  made.map((event, n): Event => ({ ...event, seq: n + 1, id: `id-${n}`, recorded_at: `2026-10-05T07:00:0${n % 4}.000+02:00` })),
);

describe('the order of arrival', () => {
  it('plays no part, nor does repetition', () => {
    const shuffled = LOG.chain((log) =>
      fc.tuple(fc.constant(log), fc.shuffledSubarray(log, { minLength: log.length }), fc.subarray(log)),
    );
    fc.assert(
      fc.property(shuffled, ([log, order, again]) => {
        expect(foldSessions([...again, ...order, ...again])).toEqual(foldSessions(log));
      }),
      { numRuns: 300 },
    );
  });

  it('what an earlier phone said and what this one says are as one log, when this one spoke later', () => {
    fc.assert(
      fc.property(LOG, fc.nat(20), (log, cut) => {
        const inTime = log.filter((event) => event.kind !== 'entry_withdrawn').map((event, n) => ({ ...event, recorded_at: `2026-10-05T07:00:${10 + n}.000+02:00` }));
        expect(foldSessions(inTime.slice(cut), foldSessions(inTime.slice(0, cut)))).toEqual(foldSessions(inTime));
      }),
    );
  });
});

describe('pain reports', () => {
  it('stand until taken back, in the order of their time', () => {
    const pain = (n: number, at: string): Event => ({ seq: n, id: `p${n}`, kind: 'pain_reported', recorded_at: at, body: { rating: n } });
    const back: Event = { seq: 3, id: 'w', kind: 'entry_withdrawn', recorded_at: '2026-10-05T09:00:00+02:00', body: { event_id: 'p1' } };
    const late = pain(1, '2026-10-05T08:00:00+02:00');
    const early = pain(2, '2026-10-05T07:00:00+02:00');
    expect(foldPain([late, early]).map((event) => event.id)).toEqual(['p2', 'p1']);
    expect(foldPain([back, late, early]).map((event) => event.id)).toEqual(['p2']);
  });
});
