/** What the server answers about programs, from its own description; a content has the shape that both apps read. */
import type { ProgramContent, Session } from '../../shared/program';
import type { Read, Schemas } from '../api/types';

export type Person = Schemas['PersonOut'];
/** A published version; it never changes. */
export type Version = Read<Schemas['ProgramOut'], { content: ProgramContent }>;
export type Draft = Read<Schemas['DraftOut'], { content: ProgramContent }>;
export type DraftBody = Pick<Draft, 'content' | 'base_number'>;
export type Finding = Schemas['ProblemOut'];
export type Checks = Schemas['ChecksOut'];

export const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const satisfies readonly Schemas['Weekday'][];
export type Template = Read<Schemas['TemplateOut'], { sessions: Session[] }>;
export type TemplateBody = Omit<Template, 'id' | 'shipped'>;
export type TemplateDay = Template['weeks'][number][number];
export type LayOut = Required<Schemas['FromTemplateBody']>;
