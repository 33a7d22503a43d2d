import { describe, expect, it } from 'vitest';
import { foldSessions } from '../../outbox/fold';
import type { Event } from '../../outbox';
import { content, entry, version } from '../testing/sample';
import { dayPlan, mainSession, progressIn } from './day';
import { wholePlan, type Version } from './plan';
import { nextSet, progressOf, setAfter, standing, NOTHING } from './progress';

const tick = (planned_id: string, key: string, round: number, more = {}) =>
  entry('set_ticked', `${planned_id.slice(0, 10)}T18:00`, { planned_id, prescription: key, round, ...more });
const progressFrom = (events: readonly Event[]) => new Map(foldSessions(events).map((state) => [state.planned_id, progressOf(state)]));

function look(date: string, events: readonly Event[] = [], versions: readonly Version[] = [version()]) {
  const progress = progressFrom(events);
  const plan = dayPlan(content, wholePlan(versions, progress), progressIn(progress), date);
  return { plan, main: mainSession(plan, progressIn(progress)) };
}
const ids = (list: readonly { planned_id: string }[]) => list.map((one) => one.planned_id);
const whole = (id: string) => [tick(id, 'p1', 1), tick(id, 'p2', 1), tick(id, 'p1', 2), tick(id, 'p2', 2)];
const finished = (id: string) => entry('session_finished', `${id.slice(0, 10)}T18:40`, { planned_id: id, minutes: 30, effort: 5 });

describe('what a day asks for', () => {
  it('knows a phone without a program, before the start and after the end', () => {
    expect(dayPlan(null, [], () => NOTHING, '2026-10-05').kind).toBe('none');
    const before = look('2026-10-01').plan;
    expect([before.kind, before.next?.planned_id, before.today.length]).toEqual(['before', '2026-10-05.1', 0]);
    expect(look('2026-10-17').plan.kind).toBe('running');
    expect(look('2026-10-18').plan.kind).toBe('over');
  });
  it('has more than one session a day, and rest is none of them', () => {
    const { plan, main } = look('2026-10-07');
    expect(ids(plan.today)).toEqual(['2026-10-07.1', '2026-10-07.2']);
    expect(main?.planned_id).toBe('2026-10-07.1');
    const rest = look('2026-10-08').plan;
    expect([rest.today.length, rest.rest?.session.name, rest.next?.planned_id]).toEqual([0, 'Rest', '2026-10-12.1']);
  });
  it('keeps a session open until the end of its week, one of a fixed day only that day', () => {
    expect(ids(look('2026-10-08').plan.open)).toEqual(['2026-10-05.1', '2026-10-07.1', '2026-10-07.2']);
    expect(ids(look('2026-10-12').plan.open)).toEqual([]);
  });
  it('does not offer again what is done, finished or left out', () => {
    expect(ids(look('2026-10-07', whole('2026-10-05.1')).plan.open)).toEqual([]);
    expect(ids(look('2026-10-07', [tick('2026-10-05.1', 'p1', 1)]).plan.open)).toEqual(['2026-10-05.1']);
    expect(ids(look('2026-10-07', [tick('2026-10-05.1', 'p1', 1), finished('2026-10-05.1')]).plan.open)).toEqual([]);
  });
  it('opens with the session that was begun, then the next that is not finished, at last the last', () => {
    const walked = entry('walk_logged', '2026-10-07T12:00', { planned_id: '2026-10-07.2', distance_km: 8, ascent_m: 300, descent_m: 300, minutes: 150, pack_kg: 6 });
    expect(look('2026-10-07', [finished('2026-10-07.1')]).main?.planned_id).toBe('2026-10-07.2');
    expect(look('2026-10-07', [walked]).main?.planned_id).toBe('2026-10-07.1');
    expect(look('2026-10-07', [walked, finished('2026-10-07.1')]).main?.planned_id).toBe('2026-10-07.2');
  });
});

describe('versions', () => {
  const shorter = { ...content, sessions: [{ ...content.sessions[0]!, rounds: 1 } as never, ...content.sessions.slice(1)] };
  const both = [version(2, '2026-10-07', { content: shorter }), version()];
  const setsOn = (id: string, events: readonly Event[]) => {
    const found = wholePlan(both, progressFrom(events)).find((one) => one.planned_id === id);
    return found?.session.kind === 'circuit' ? [found.version.number, found.session.rounds] : null;
  };
  it('leaves days before a new version to the old one', () => {
    expect(setsOn('2026-10-05.1', [])).toEqual([1, 2]);
    expect(setsOn('2026-10-07.1', [])).toEqual([2, 1]);
  });
  it('never changes stones among which someone stands', () => {
    expect(setsOn('2026-10-07.1', [tick('2026-10-07.1', 'p1', 1, { program_version: 1 })])).toEqual([1, 2]);
  });
  it('goes by the day where the version begun under is no longer on the phone', () => {
    expect(setsOn('2026-10-07.1', [tick('2026-10-07.1', 'p1', 1, { program_version: 9 })])).toEqual([2, 1]);
  });
});

describe('the next stone', () => {
  const session = content.sessions[0]!;
  const after = (events: readonly Event[]) => progressFrom(events).get('2026-10-05.1') ?? NOTHING;
  it('is the first that is neither laid nor left out, in the order it is done', () => {
    const out = entry('set_left_out', '2026-10-05T18:01', { planned_id: '2026-10-05.1', prescription: 'p1', round: 1, reason: 'pain' });
    expect(nextSet(session, NOTHING)?.key).toBe('p1/1');
    expect(nextSet(session, after([out]))?.key).toBe('p2/1');
    expect(nextSet(session, after(whole('2026-10-05.1')))).toBeNull();
  });
  it('comes after this one, and only then an earlier one', () => {
    expect(setAfter(session, after([tick('2026-10-05.1', 'p1', 2)]), 'p1/2')?.key).toBe('p2/2');
    expect(setAfter(session, after([tick('2026-10-05.1', 'p2', 2)]), 'p2/2')?.key).toBe('p1/1');
  });
  it('stands back when a stone is taken up', () => {
    const up = entry('set_unticked', '2026-10-05T18:30', { planned_id: '2026-10-05.1', prescription: 'p1', round: 1 });
    expect(nextSet(session, after([...whole('2026-10-05.1'), up]))?.key).toBe('p1/1');
    expect(standing(session, after([...whole('2026-10-05.1'), up]))).toBe('partly');
  });
  it('calls a session left out when every stone was', () => {
    const out = ['p1', 'p2'].flatMap((key) => [1, 2].map((round) => entry('set_left_out', '2026-10-05T18:01', { planned_id: '2026-10-05.1', prescription: key, round, reason: 'no_time' })));
    expect(standing(session, after(out))).toBe('left_out');
    expect(standing(session, after(out.slice(1)))).toBe('none');
  });
});
