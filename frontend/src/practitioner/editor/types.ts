/** What the server answers about programs, field for field. */
import type { ProgramContent, Session } from '../../shared/program';
import type { LocalDate } from '../../shared/dates';
import type { Time } from '../api/types';
import type { Mend } from './pointer';

export interface Person {
  id: string;
  display_name: string;
}
/** A published version; it never changes. */
export interface Version {
  id: string;
  number: number;
  published_at: Time;
  published_by: Person;
  effective_on: LocalDate;
  content: ProgramContent;
  changes: string[];
  note: string;
}
export interface DraftBody {
  content: ProgramContent;
  base_number: number | null;
}
export interface Draft extends DraftBody {
  saved_at: Time;
  saved_by: Person;
  version: number;
}
export interface Finding {
  pointer: string;
  code: string;
  message: string;
  severity: 'error' | 'warning';
  fix: { label: string; mends: Mend[] } | null;
}
export interface Checks {
  problems: Finding[];
  changes: string[];
  sessions: { key: string; sets: number; minutes: number | null; planned_load: number | null }[];
  weeks: { starts_on: LocalDate; sessions: number; minutes: number | null; planned_load: number | null }[];
}

export const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
export interface TemplateDay {
  weekday: (typeof WEEKDAYS)[number];
  session: string;
  fixed_day: boolean;
}
export interface TemplateBody {
  name: string;
  about: string;
  sessions: Session[];
  /** From the start of the program, seven days each; the last one repeats until its end. */
  weeks: TemplateDay[][];
}
export interface Template extends TemplateBody {
  id: string;
  shipped: boolean;
}
export interface LayOut {
  template: string;
  starts_on: LocalDate;
  ends_on: LocalDate | null;
  goal: { name: string; date: LocalDate } | null;
}
