/** What was typed of a walk, and what it means. Kept as typed, so that 20 lb never comes back as 19.8. */
import { draftKey, events, record, type Bodies } from '../../../outbox';
import { isLocalDate } from '../../../shared/dates';
import { parseNumber } from '../../../shared/numbers';
import type { Walk } from '../../../shared/program';
import { parseQuantity, toShown } from '../../../shared/units';
import { attempt, withdraw } from '../../session/actions';
import { expectedMinutes } from '../../session/estimate';
import { lastOf } from '../../session/log';
import type { Planned } from '../../session/plan';

export const WALK_FIELDS = {
  distance: { quantity: 'distance', most: 200, body: 'distance_km' },
  ascent: { quantity: 'height', most: 10_000, body: 'ascent_m' },
  descent: { quantity: 'height', most: 10_000, body: 'descent_m' },
  pack: { quantity: 'mass', most: 300, body: 'pack_kg' },
} as const;
export type WalkField = keyof typeof WALK_FIELDS;
export const MINUTES_MAX = 1440;

/** `shared`: it holds a walk that another app shared, so that the next one does not push it out before it is saved. */
export type Typed = Record<WalkField, string> & { minutes: string; effort: number | null; day: string; shared?: boolean };
export type WalkErrors = Partial<Record<WalkField | 'minutes' | 'day', 'missing' | 'too_much'>>;

const shown = (value: number, quantity: 'distance' | 'height' | 'mass'): string => String(toShown(quantity, value));

type Values = Pick<Walk, 'distance_km' | 'ascent_m' | 'descent_m' | 'pack_kg'>;

/** The form as it opens: what was entered before, else empty. */
export function typedFrom(walk: (Values & { minutes: number }) | null, effort: number | null, day: string): Typed {
  const text = (field: WalkField) => (walk ? shown(walk[WALK_FIELDS[field].body], WALK_FIELDS[field].quantity) : '');
  return {
    distance: text('distance'), ascent: text('ascent'), descent: text('descent'), pack: text('pack'),
    minutes: walk ? String(walk.minutes) : '', effort, day,
  };
}

/** As the plan says, for the person to change where it was different. */
export const typedAsPlanned = (walk: Walk, day: string): Typed => typedFrom({ ...walk, minutes: expectedMinutes(walk) ?? 0 }, null, day);

function numberProblem(value: number | null, most: number): 'missing' | 'too_much' | null {
  if (value === null) return 'missing';
  return value > most ? 'too_much' : null;
}

export type WalkBody = Omit<Bodies['walk_logged'], 'planned_id' | 'program_version'>;

/** What is wrong with it, or the entry it makes. */
export function readWalk(typed: Typed, today: string): { errors: WalkErrors; body: WalkBody | null } {
  const errors: WalkErrors = {};
  const values: Partial<Record<string, number>> = {};
  for (const field of Object.keys(WALK_FIELDS) as WalkField[]) {
    const { quantity, most, body } = WALK_FIELDS[field];
    const value = parseQuantity(quantity, typed[field]);
    const problem = numberProblem(value, most);
    if (problem) errors[field] = problem;
    else values[body] = value as number;
  }
  const minutes = parseNumber(typed.minutes);
  if (minutes === null || !Number.isInteger(minutes) || minutes < 0 || minutes > MINUTES_MAX) errors.minutes = 'missing';
  if (!isLocalDate(typed.day) || typed.day > today) errors.day = 'missing';
  if (Object.keys(errors).length > 0) return { errors, body: null };
  const body = { ...(values as unknown as Values), minutes: minutes as number } as WalkBody;
  if (typed.effort !== null) body.effort = typed.effort;
  if (typed.day !== today) body.day = typed.day;
  return { errors, body };
}

/** A second entry for a planned walk replaces the first. */
export function saveWalk(planned: Planned | null, body: WalkBody, draft: string): Promise<boolean> {
  const before = planned && lastOf(events.value, planned.planned_id, 'walk_logged');
  const about = planned ? { planned_id: planned.planned_id, program_version: planned.version.number } : {};
  return attempt(async () => {
    await record('walk_logged', { ...about, ...body }, { [draftKey(draft)]: undefined });
    if (before) await withdraw(before.id);
  });
}
