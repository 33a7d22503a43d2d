/** What the server answers, field for field. Output fields are always present; null where unknown. */
import type { LocalDate } from '../../shared/dates';
import type { Aspect, Region, Side } from '../../shared/body/places';

/** RFC 3339. */
export type Time = string;
export interface Items<T> { items: T[] }

export interface Me {
  practitioner: { id: string; display_name: string; email: string };
  practice: { id: string; name: string; time_zone: string; emergency_text: string; reply_time_text: string };
}

export const KIT = ['chair', 'step', 'stairs', 'wall', 'mat', 'band', 'dumbbell', 'pack', 'towel', 'ball', 'rail', 'table', 'pillow'] as const;
export type Kit = (typeof KIT)[number];

/** What a practitioner may say of a client. */
export interface ClientFields {
  display_name: string;
  birth_year: number | null;
  time_zone: string;
  kit: Kit[];
  usual_pain: number;
  thresholds: { pain_stop: number };
  note: string;
}
export interface Client extends ClientFields {
  id: string;
  created_at: Time;
  archived_at: Time | null;
  version: number;
}

export interface Invitation {
  id: string;
  client_id: string;
  delivery: 'in_person' | 'link';
  url: string;
  code: string;
  expires_at: Time;
  qr_svg: string;
}
export interface Device {
  id: string;
  label: string;
  paired_at: Time;
  revoked_at: Time | null;
  last_heard_at: Time | null;
  acknowledged_through: number;
  waiting: { pairing_id: string; check_number: string } | null;
}
export interface WaitingPairing {
  id: string;
  client_id: string;
  client_name: string;
  check_number: string;
  created_at: Time;
}

/** Done over prescribed in a span; `low` and `high` are shares from 0 to 1, equal when all is heard, null when nothing was prescribed. */
export interface Ratio { prescribed: number; done: number; low: number | null; high: number | null }
export interface Ratios { by_session: Ratio; by_set: Ratio }

export interface RidgeData {
  weeks: { starts_on: LocalDate; planned_load: number; done_load: number; heard: 'all' | 'part' | 'none'; due_share: number | null }[];
  today: LocalDate;
  heard_until: LocalDate | null;
  goal: Goal | null;
}
export interface Goal { name: string; date: LocalDate }

export type Status = 'done' | 'partly' | 'open' | 'missed' | 'not_heard' | 'to_come';
export interface PlannedShort { planned_id: string; date: LocalDate; name: string; status: Status; settled: boolean }
export interface SessionItem extends PlannedShort {
  kind: string;
  sets_done: number;
  sets_prescribed: number;
  program_version: number | null;
  done_on: LocalDate | null;
  effort: number | null;
  minutes: number | null;
  planned_load: number | null;
  done_load: number | null;
}

export type Rule = 'red_flag_symptom' | 'pain_too_high' | 'pain_next_morning' | 'pain_rising' | 'effort_rising';
export type Action = 'acknowledge' | 'ease_off' | 'hold' | 'message' | 'close';
export type RuleKind = 'published' | 'derived' | 'house';
export interface FlagShort { id: string; rule: Rule; title: string; since: LocalDate }
export interface Decision { action: Action; note: string; message: string; decided_at: Time; by: string; program_number: number | null }
export interface Flag extends FlagShort {
  client_id: string;
  client_name: string;
  kind: RuleKind;
  source: { key: string; title: string; authors: string; year: string };
  status: 'open' | 'acknowledged' | 'closed';
  evidence: { event_id: string; day: LocalDate; sentence: string }[];
  suggestion: { action: Action; sentence: string; effect: string } | null;
  answers: { action: Action; needs_message: boolean }[];
  decisions: Decision[];
}
export interface Decided { flag: Flag; program_number: number | null }

export type Group = 'needs_you' | 'silent' | 'on_the_way' | 'no_program';
export interface CaseloadRow {
  client: { id: string; display_name: string; age: number | null };
  goal: { name: string; date: LocalDate; days_to: number } | null;
  place: number;
  group: Group;
  reason: { rule: string; sentence: string; since: LocalDate | null; kind: RuleKind; source: string };
  happened: string;
  suggestion: { sentence: string; flag_id: string | null; action: Action | null } | null;
  adherence: { days_7: Ratios; days_28: Ratios };
  last_heard_at: Time | null;
  pain: { worst_7d: number | null; region: Region; side: Side; on: LocalDate } | null;
  open_flags: FlagShort[];
  last_days: PlannedShort[];
  ridge: RidgeData;
}
export interface Caseload {
  as_of: Time;
  today: LocalDate;
  headline: { people: number; need_you: number; silent: number };
  items: CaseloadRow[];
}

export type PainWhen = 'before' | 'during' | 'after' | 'next_morning';
export interface PainReport {
  event_id: string;
  day: LocalDate;
  at: Time;
  rating: number;
  region: Region;
  side: Side;
  aspect: Aspect | null;
  when: PainWhen;
  planned_id: string | null;
}
export interface Message { id: string; text: string; from: string; sent_at: Time; flag_id: string | null; read_at: Time | null }
export interface Overview {
  client: Omit<Client, 'created_at'> & { age: number | null };
  program: { number: number; published_at: Time; title: string } | null;
  current_number: number | null;
  phone_number: number | null;
  goal: { name: string; date: LocalDate; days_to: number } | null;
  /** When the phone was last heard, with the client's own offset. */
  heard_until: Time | null;
  adherence_7: Ratios;
  adherence_28: Ratios;
  ridge: RidgeData;
  days: SessionItem[];
  pain: PainReport[];
  pain_regions: { region: Region; side: Side; quiet_days: number | null; worst_by_week: (number | null)[] }[];
  flags: Flag[];
  messages: Message[];
  notes: { event_id: string; day: LocalDate; text: string }[];
  refused_count: number;
  /** Sessions outside the plan on a day on which a planned one was done too: perhaps the same. */
  possible_doubles: { day: LocalDate; planned_id: string; name: string }[];
}

/** A published version as lists tell it, without its content. */
export interface ProgramVersion {
  id: string;
  number: number;
  title: string;
  published_at: Time;
  published_by: { id: string; display_name: string };
  effective_on: LocalDate;
  changes: string[];
  note: string;
}
export interface TimelineItem { at: Time; local_date: LocalDate; kind: string; source: string; event_id: string | null; body: Record<string, unknown> }
export interface Timeline { items: TimelineItem[]; next_cursor: string | null }
export interface RefusedEvent { event_id: string; device_id: string; seq: number | null; received_at: Time; raw: string; problem: { detail?: string; title?: string; errors?: { pointer: string; detail: string }[] } }
export interface Retry { accepted: boolean; problem: { detail?: string } | null }
