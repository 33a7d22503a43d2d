/** What is new in a movement's dose: told until the first session with it is finished under the new version. */
import type { Planned } from './plan';
import { setsOf, type Progress } from './progress';

const has = ({ session }: Planned, key: string): boolean => setsOf(session).some((set) => set.prescription.key === key);

/** `all` is the whole plan. Answers the sentence for a prescription of a planned session; null when it is nothing new. */
export function changedSince(
  planned: Planned, key: string, all: readonly Planned[], progressFor: (planned_id: string) => Progress,
): string | null {
  const { number, changed } = planned.version;
  const sentence = changed?.find((one) => one.prescription === key)?.sentence ?? null;
  if (sentence === null) return null;
  const isDone = (one: Planned) =>
    one.version.number === number && has(one, key) && progressFor(one.planned_id).finished && progressFor(one.planned_id).program_version === number;
  return all.some(isDone) ? null : sentence;
}
