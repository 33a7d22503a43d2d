/** What the practice sends: later changes of a kind replace earlier ones; messages and answers add up. */
import type { ProgramContent } from '../shared/program';
import type { Change } from './sync';

export interface Practice { name: string; practitioner: string; emergency_text: string; reply_time_text: string }
export interface Settings { display_name: string; time_zone: string; thresholds: Record<string, unknown> }
export interface Program {
  id: string;
  number: number;
  published_at: string;
  effective_on: string;
  /** What changed against the version before, in sentences. */
  changes: string[];
  /** What is new in a prescription since the version before; its sentence stands on the exercise card. */
  changed?: { prescription: string; sentence: string }[];
  content: ProgramContent;
  /** The library entries this version uses, whole. */
  exercises: LibraryExercise[];
}
/** A library entry as it came with the program (the API's `Exercise`), as far as the phone shows it. */
export interface LibraryExercise {
  code: string;
  /** Of the practice's own; older entries do not say. */
  own?: { drawing: string } | null;
  name: string;
  why: string;
  sides: 'each' | 'both';
  cues: string[];
  faults: { see: string; instead: string }[];
  cautions: string[];
  /** Easiest first. */
  ladder: LibraryVariant[];
}
export interface LibraryVariant {
  variant: string;
  name: string;
  short: string;
  sides: 'each' | 'both';
  kit: string[];
  how: string[];
  dose: { reps?: [number, number]; hold_s?: [number, number] };
  load: 'none' | 'optional' | 'required';
  /** Told truly of a practice's own movement only: a program may be older than the library's drawings. */
  drawn?: boolean;
}
export interface Message { id: string; from: string; text: string; sent_at: string; flag_id?: string | null }
export interface FlagAnswer { flag_id: string; action: string; event_ids?: string[]; message?: string | null; decided_at: string }

/** The days of the trip in brief; metres are null where nobody knows them. */
export interface Trip { legs: { day: number; name: string; distance_km: number; ascent_m: number | null; descent_m: number | null }[] }

export interface Feed {
  practice: Practice | null;
  settings: Settings | null;
  /** Newest version; a session begun under an older one names it, so the older ones are kept too. */
  program: Program | null;
  olderPrograms: Program[];
  messages: Message[];
  answers: FlagAnswer[];
  /** Not there on phones that were paired before trips were sent. */
  trip?: Trip;
}
export const NO_FEED: Feed = { practice: null, settings: null, program: null, olderPrograms: [], messages: [], answers: [] };
/** How many older versions stay on the phone: a session begun under one is finished under it. House value. */
const OLDER_KEPT = 3;

const byNumber = (a: Change, b: Change) => a.number - b.number;

/** Pure and repeatable: the same changes again alter nothing. Unknown kinds are passed over: a newer server may say more. */
export function applyChanges(feed: Feed, changes: readonly Change[]): Feed {
  return [...changes].sort(byNumber).reduce(applyChange, feed);
}

function applyChange(feed: Feed, { kind, body }: Change): Feed {
  if (kind === 'practice') return { ...feed, practice: body as unknown as Practice };
  if (kind === 'settings') return { ...feed, settings: body as unknown as Settings };
  if (kind === 'program') return withProgram(feed, body as unknown as Program);
  if (kind === 'trip') return { ...feed, trip: body as unknown as Trip };
  if (kind === 'message') return { ...feed, messages: added(feed.messages, body as unknown as Message, (m) => m.id) };
  if (kind === 'flag_answer') return { ...feed, answers: added(feed.answers, body as unknown as FlagAnswer, (a) => `${a.flag_id} ${a.decided_at}`) };
  return feed;
}

function withProgram(feed: Feed, program: Program): Feed {
  const before = feed.program;
  const older = before && before.number !== program.number ? [before, ...feed.olderPrograms] : feed.olderPrograms;
  return { ...feed, program, olderPrograms: older.filter((old) => old.number !== program.number).slice(0, OLDER_KEPT) };
}

function added<T>(list: readonly T[], item: T, name: (item: T) => string): T[] {
  return [...list.filter((old) => name(old) !== name(item)), item];
}
