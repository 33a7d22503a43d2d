import { expect, it } from 'vitest';
import { foldSessions } from '../../outbox/fold';
import { entry, version } from '../testing/sample';
import { wholePlan } from '../session/plan';
import { progressOf } from '../session/progress';
import { loadsOf, ridgeWeeks, unknownSpans } from './loads';

const log = [
  entry('session_finished', '2026-10-05T18:40', { planned_id: '2026-10-05.1', minutes: 40, effort: 6 }),
  entry('set_ticked', '2026-10-06T18:00', { planned_id: '2026-10-06.1', prescription: 'p1', round: 1 }),
  entry('walk_logged', '2026-10-06T12:00', { distance_km: 5, ascent_m: 0, descent_m: 0, minutes: 60, pack_kg: 0, effort: 3 }),
];
const progress = new Map(foldSessions(log).map((state) => [state.planned_id, progressOf(state)]));
const loads = loadsOf(wholePlan([version()], progress), progress);

it('adds up weeks: rated sessions by their rating, unrated ones by their share, walks outside the plan too', () => {
  // Planned: three circuits of 5 x 30 and a walk of 4 x 150. Done: 6 x 40, a quarter of 150, and 3 x 60.
  const [first, second] = ridgeWeeks(loads, '2026-10-07', '2026-10-01');
  expect(first).toEqual({ starts_on: '2026-10-05', planned_load: 1050, done_load: 240 + 37.5 + 180, heard: 'part', due_share: 300 / 1050 });
  expect(second).toMatchObject({ starts_on: '2026-10-12', planned_load: 150, done_load: 0, heard: 'none', due_share: null });
});

it('says nothing of weeks before this phone was paired', () => {
  const weeks = ridgeWeeks(loadsOf(wholePlan([version()], new Map()), new Map()), '2026-10-13', '2026-10-13');
  expect(weeks.map((week) => week.heard)).toEqual(['none', 'part']);
  expect(unknownSpans(weeks, '2026-10-13')).toEqual([{ from: '2026-10-05', to: '2026-10-11' }]);
  expect(ridgeWeeks(loads, '2026-10-13', '2026-10-13')[0]?.heard).toBe('all');
});
