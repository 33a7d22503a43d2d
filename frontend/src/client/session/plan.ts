/** Which planned sessions there are, and under which program version each of them stands. */
import { plannedSessions, type PlannedSession, type ProgramContent } from '../../shared/program';
import type { LocalDate } from '../../shared/dates';
import type { Exercise } from './library';
import type { Progress } from './progress';

export interface Version {
  number: number;
  effective_on: LocalDate;
  published_at: string;
  changes: string[];
  changed?: { prescription: string; sentence: string }[];
  content: ProgramContent;
  exercises: readonly Exercise[];
}
export interface Planned extends PlannedSession {
  version: Version;
}

const within = (version: Version): Planned[] => plannedSessions(version.content).map((planned) => ({ ...planned, version }));

/** The version in force on a day: the newest that was effective by then; before the first one, the oldest known. */
export function versionOn(versions: readonly Version[], date: LocalDate): Version | null {
  const newestFirst = [...versions].sort((a, b) => b.number - a.number);
  return newestFirst.find((version) => version.effective_on <= date) ?? newestFirst.at(-1) ?? null;
}

/**
 * The whole plan. A day belongs to the version in force on it; a session that was begun under an older version stays what it was
 * when it was begun, so that a new version never changes stones that someone stands among.
 */
export function wholePlan(versions: readonly Version[], progress: ReadonlyMap<string, Pick<Progress, 'program_version'>>): Planned[] {
  const plan = new Map<string, Planned>();
  for (const version of versions) {
    for (const planned of within(version)) {
      const begunUnder = progress.get(planned.planned_id)?.program_version;
      const known = begunUnder != null && versions.some((other) => other.number === begunUnder);
      const belongs = known ? begunUnder === version.number : versionOn(versions, planned.day.date) === version;
      if (belongs) plan.set(planned.planned_id, planned);
    }
  }
  return [...plan.values()].sort((a, b) => (a.planned_id < b.planned_id ? -1 : 1));
}
