import { describe, expect, it } from 'vitest';
import type { ProgramContent } from '../../shared/program';
import type { Flag, SessionItem } from '../api/types';
import { isUnchanged, sumOf, weekPairs } from './compare';
import { pauseNoticed } from './pause';
import { accept, addAway, carriedTo, moveSession, pin, planFrom, removeAway, settleFor, tripLater, unpin } from './plan';
import { circuitsOf, firstChoice } from './take';
import type { Proposal, ProposedSession, Start } from './types';

const level = { distance_km: 8, ascent_m: 300, pack_kg: 4 };
const start: Start = { today: '2026-06-10', season: null, starts_on: '2026-06-11', trip_name: '', trip_on: '2026-07-30', walking: level, walked_on: null, longest_day: level, longest_day_known: false };
const plan = planFrom(start);

describe('what a season is planned from', () => {
  it('begins with what was planned before, else with what is known', () => {
    expect(plan).toMatchObject({ starts_on: '2026-06-11', trip_on: '2026-07-30', walking: level, pins: [] });
    expect(planFrom({ ...start, season: { ...plan, things_a_week: 1 } }).things_a_week).toBe(1);
    expect(planFrom({ ...start, trip_on: null }).trip_on).toBe('2026-07-30');
    expect(planFrom({ ...start, trip_on: '2026-06-01' }).trip_on).toBe('2026-07-30');
  });
  it('moves a session by pinning it to its new day, with its lock', () => {
    const pinned = pin(plan, { date: '2026-06-15', activity: 'strength' }, true);
    expect(moveSession(pinned, { date: '2026-06-15', activity: 'strength', locked: true }, '2026-06-12').pins).toEqual([{ date: '2026-06-12', activity: 'strength', locked: true }]);
    expect(unpin(pinned, { date: '2026-06-15', activity: 'strength' }).pins).toEqual([]);
    expect(unpin(pinned, { date: '2026-06-15', activity: 'walk' }).pins).toHaveLength(1);
    expect(pin(pinned, { date: '2026-06-15', activity: 'strength' }).pins).toEqual([{ date: '2026-06-15', activity: 'strength', locked: false }]);
  });
  it('carries a session no further than from today to the day before the trip', () => {
    expect(carriedTo(plan, '2026-06-20', '2026-06-21', -7)).toBe('2026-06-20');
    expect(carriedTo(plan, '2026-06-01', '2026-06-12', -7)).toBe('2026-06-11');
    expect(carriedTo(plan, '2026-06-01', '2026-07-28', 7)).toBe('2026-07-29');
    expect(carriedTo(plan, '2026-06-01', '2026-06-28', 1)).toBe('2026-06-29');
  });
  it('takes each of the honest choices', () => {
    const short = { thing: 'distance_km', reached: 12.3, wanted: 16, short_by: 3.7, weeks_more: 3, accepted: false } as const;
    expect(settleFor(plan, short).longest_day).toEqual({ ...level, distance_km: 12.3 });
    expect(tripLater(plan, 3).trip_on).toBe('2026-08-20');
    const accepted = accept(plan, 'distance_km', true);
    expect(accepted.accepted).toEqual(['distance_km']);
    expect(accept(accepted, 'distance_km', false).accepted).toEqual([]);
  });
  it('keeps days away by their place', () => {
    const away = addAway(addAway(plan, '2026-06-12', '2026-06-14'), '2026-07-01', '2026-07-02');
    expect(removeAway(away, 0).away).toEqual([{ first: '2026-07-01', last: '2026-07-02' }]);
  });
});

const session = (date: string, activity: ProposedSession['activity'], walk: ProposedSession['walk'] = null): ProposedSession => ({ date, activity, walk, effort: 4, minutes: 60, pinned: false, locked: false });
const proposal: Proposal = {
  weeks: [
    { starts_on: '2026-07-16', ends_on: '2026-07-22', phase: 'taper', planned_load: 0, sessions: [session('2026-07-18', 'walk', level), session('2026-07-20', 'strength')] },
    { starts_on: '2026-07-23', ends_on: '2026-07-29', phase: 'taper', planned_load: 0, sessions: [session('2026-07-25', 'walk', { ...level, distance_km: 6 }), session('2026-07-25', 'strength')] },
  ],
  shortfalls: [],
  notes: [],
};
const content: ProgramContent = {
  title: 'Legs', goal: null, starts_on: '2026-07-01', ends_on: '2026-07-29',
  sessions: [
    { key: 'w', kind: 'walk', name: 'Walk', note: '', expected_effort: 4, expected_minutes: 60, ...level, descent_m: 300 },
    { key: 'c', kind: 'circuit', name: 'Legs', note: '', expected_effort: 4, expected_minutes: 60, rounds: 3, prescriptions: [] },
    { key: 'r', kind: 'rest', name: 'Rest', note: '' },
  ],
  days: [
    { date: '2026-07-02', session: 'c', fixed_day: false },
    { date: '2026-07-18', session: 'w', fixed_day: false },
    { date: '2026-07-20', session: 'c', fixed_day: false },
    { date: '2026-07-25', session: 'w', fixed_day: false },
    { date: '2026-07-29', session: 'r', fixed_day: false },
  ],
};

describe('weeks side by side', () => {
  it('counts weeks back from the trip and leaves out what lies before the day', () => {
    const pairs = weekPairs(content, proposal, '2026-07-10');
    expect(pairs.map((pair) => [pair.starts_on, pair.before.length, pair.after.length])).toEqual([['2026-07-16', 2, 2], ['2026-07-23', 1, 2]]);
    expect(pairs.map(isUnchanged)).toEqual([true, false]);
    expect(weekPairs(content, proposal, '2026-07-01')[0]).toMatchObject({ starts_on: '2026-07-02', after: [] });
  });
  it('tells a walk of another length from the same', () => {
    const shorter = { ...proposal, weeks: [{ ...proposal.weeks[0]!, sessions: [session('2026-07-18', 'walk', { ...level, distance_km: 7 }), session('2026-07-20', 'strength')] }] };
    expect(weekPairs(content, shorter, '2026-07-16').map(isUnchanged)).toContain(false);
  });
  it('answers nothing against an empty proposal, and everything as new against no program', () => {
    expect(weekPairs(content, { ...proposal, weeks: [] }, '2026-07-01')).toEqual([]);
    expect(weekPairs(null, proposal, '2026-07-01').map((pair) => pair.before)).toEqual([[], []]);
  });
  it('sums a week up', () => {
    expect(sumOf(weekPairs(content, proposal, '2026-07-01')[1]!.before)).toEqual({ strength: 1, cardio: 0, walks: 1, longest: level });
    expect(sumOf([]).longest).toBeNull();
  });
});

const day = (date: string, status: SessionItem['status']) => ({ date, status }) as SessionItem;
const flag = (rule: Flag['rule'], status: Flag['status'], since: string) => ({ rule, status, since }) as Flag;

describe('a pause', () => {
  it('is a fortnight of which every session is missed', () => {
    const missed = [day('2026-06-01', 'missed'), day('2026-06-05', 'missed'), day('2026-06-12', 'to_come')];
    expect(pauseNoticed(missed, [], '2026-06-10')).toEqual({ reason: 'missed_fortnight', since: '2026-06-01' });
    expect(pauseNoticed([day('2026-05-20', 'done'), ...missed], [], '2026-06-10')).not.toBeNull();
    expect(pauseNoticed([day('2026-06-03', 'partly'), ...missed], [], '2026-06-10')).toBeNull();
    expect(pauseNoticed(missed.slice(1), [], '2026-06-10')).toBeNull();
  });
  it('is never made of what was not heard', () => {
    expect(pauseNoticed([day('2026-06-01', 'not_heard'), day('2026-06-05', 'missed')], [], '2026-06-10')).toBeNull();
  });
  it('is pain under an open flag before all', () => {
    const flags = [flag('effort_rising', 'open', '2026-05-01'), flag('pain_too_high', 'open', '2026-06-04'), flag('pain_rising', 'closed', '2026-05-02')];
    expect(pauseNoticed([], flags, '2026-06-10')).toEqual({ reason: 'pain', since: '2026-06-04' });
    expect(pauseNoticed([], flags.slice(0, 1), '2026-06-10')).toBeNull();
  });
});

describe('the circuits of a season', () => {
  const [walk, circuit] = content.sessions as [ProgramContent['sessions'][number], Extract<ProgramContent['sessions'][number], { kind: 'circuit' }>];
  const fewer = { ...circuit, key: 'c-2r' };
  it('are those of the program, without those that a season made of them', () => {
    expect(circuitsOf([walk, circuit, fewer]).map(({ key }) => key)).toEqual(['c']);
    expect(circuitsOf([fewer]).map(({ key }) => key)).toEqual(['c-2r']);
  });
  it('begin as in the season before, where they are still there', () => {
    const two = { ...content, sessions: [circuit, { ...circuit, key: 'd' }] };
    expect(firstChoice(two, ['d', 'gone'])).toEqual(['d']);
    expect(firstChoice(two, ['gone'])).toEqual(['c', 'd']);
    expect(firstChoice(null, [])).toEqual([]);
  });
});
