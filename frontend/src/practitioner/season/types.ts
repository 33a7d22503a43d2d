/** What the server says of seasons, from its own description. */
import type { ProgramContent } from '../../shared/program';
import type { Schemas } from '../api/types';

export type Plan = Schemas['SeasonPlan-Output'];
export type Level = Schemas['WalkLevel'];
export type Pin = Plan['pins'][number];
export type Activity = Pin['activity'];
export type Proposal = Schemas['SeasonOut'];
export type ProposedWeek = Proposal['weeks'][number];
export type ProposedSession = ProposedWeek['sessions'][number];
export type Shortfall = Proposal['shortfalls'][number];
export type Start = Schemas['SeasonStart'];
export type Pause = Schemas['Pause'];
export type Resumption = Schemas['Resumption'];
export type LayOut = Omit<Schemas['LayOutBody'], 'content' | 'season'> & { content: ProgramContent | null; season: Plan };

export const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const satisfies readonly Plan['weekdays'][number][];
export const PAUSES = ['illness', 'holiday', 'missed_fortnight', 'pain'] as const satisfies readonly Pause[];
