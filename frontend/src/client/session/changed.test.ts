import { describe, expect, it } from 'vitest';
import { version } from '../testing/sample';
import { changedSince } from './changed';
import { wholePlan } from './plan';
import { NOTHING, type Progress } from './progress';

const changed = [{ prescription: 'p1', sentence: '12 instead of 8 to 10' }];
const plan = wholePlan([version(1), version(2, '2026-10-06', { changed })], new Map());
const [first, second] = plan.filter((planned) => planned.session.kind === 'circuit');
const progress = (id: string, more: Partial<Progress>) => (asked: string) => (asked === id ? { ...NOTHING, ...more } : NOTHING);

describe('what changed since last time', () => {
  it('is told of the changed movement, under the version that changed it', () => {
    expect(changedSince(second!, 'p1', plan, () => NOTHING)).toBe('12 instead of 8 to 10');
    expect(changedSince(second!, 'p2', plan, () => NOTHING)).toBeNull();
    expect(changedSince(first!, 'p1', plan, () => NOTHING)).toBeNull();
  });
  it('stays while the first session is on its way, and goes when it is finished', () => {
    const id = second!.planned_id;
    expect(changedSince(second!, 'p1', plan, progress(id, { program_version: 2, done: new Set(['p1/1']) }))).not.toBeNull();
    expect(changedSince(second!, 'p1', plan, progress(id, { program_version: 2, finished: true }))).toBeNull();
    expect(changedSince(plan.at(-1)!, 'p1', plan, progress(id, { program_version: 2, finished: true }))).toBeNull();
  });
  it('does not count what was done under the version before', () => {
    expect(changedSince(second!, 'p1', plan, progress(first!.planned_id, { program_version: 1, finished: true }))).not.toBeNull();
  });
});
