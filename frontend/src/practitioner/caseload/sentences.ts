/** The caseload's sentences: pure, so that they can be tested in each language. */
import { dayShort } from '../../shared/dates';
import { placeWords } from '../../shared/body/places';
import type { Caseload, CaseloadRow, Group } from '../api/types';
import { countTitle, countWord } from '../parts/counts';
import { t } from '../words';

export const GROUPS: readonly Group[] = ['needs_you', 'silent', 'on_the_way', 'no_program'];

/** "Three of eleven people need you today" */
export function headline({ people, need_you }: Caseload['headline']): string {
  if (people === 0) return t('headlineEmpty');
  if (need_you === 0) return t('headlineNobody');
  if (people === 1) return t('headlineOnly');
  return t('headlineNeed', { n: need_you, count: countTitle(need_you), people: countWord(people) });
}

const GROUP_WORDS = {
  needs_you: ['groupNeedsYou', 'groupNeedsYouText'], silent: ['groupSilent', 'groupSilentText'],
  on_the_way: ['groupOnTheWay', 'groupOnTheWayText'], no_program: ['groupNoProgram', 'groupNoProgramText'],
} as const satisfies Record<Group, readonly [string, string]>;

export function groupWords(group: Group, n: number): { title: string; text: string } {
  const [title, text] = GROUP_WORDS[group];
  return { title: t(title), text: t(text, { n, count: countTitle(n) }) };
}

/** "47, Harrowcomb traverse, in 43 days" */
export function whoWords({ client, goal }: Pick<CaseloadRow, 'client' | 'goal'>): string {
  return [client.age === null ? '' : String(client.age), tripWords(goal)].filter(Boolean).join(', ');
}

export function tripWords(goal: CaseloadRow['goal']): string {
  if (!goal) return t('noTrip');
  if (goal.days_to === 0) return t('tripToday', { name: goal.name });
  return t(goal.days_to > 0 ? 'tripIn' : 'tripPast', { name: goal.name, n: Math.abs(goal.days_to) });
}

/** What happened: the server's sentence, and its reason where that says more. */
export function happenedWords({ happened, reason }: Pick<CaseloadRow, 'happened' | 'reason'>): string {
  return happened.includes(reason.sentence) || !reason.sentence ? happened : `${reason.sentence} ${happened}`.trim();
}

export function painWords(pain: CaseloadRow['pain']): string | null {
  if (!pain || pain.worst_7d === null) return null;
  return t('worstPain', { rating: pain.worst_7d, place: placeWords(pain), day: dayShort(pain.on) });
}

/** What the row's one button does. Null where there is nothing to do. */
export interface Next {
  does: 'decide' | 'write' | 'program' | 'phones' | 'look';
  to: string | null;
}
export function nextStep({ client, suggestion, group, reason }: CaseloadRow): Next | null {
  const person = `/clients/${client.id}`;
  if (suggestion?.flag_id) return { does: 'decide', to: `${person}?flag=${suggestion.flag_id}` };
  if (group === 'no_program') return { does: 'program', to: `${person}/program` };
  if (reason.rule === 'never_paired') return { does: 'phones', to: `${person}/phones` };
  if (reason.rule === 'refused_entries') return { does: 'look', to: `${person}?at=aside` };
  return suggestion ? { does: 'write', to: null } : null;
}

/** Rows that differ between two answers: new, gone, moved or changed. A ridge's time of day is no news. */
export function countChanges(shown: readonly CaseloadRow[], latest: readonly CaseloadRow[]): number {
  const before = new Map(shown.map((row) => [row.client.id, JSON.stringify(row)]));
  const after = new Map(latest.map((row) => [row.client.id, JSON.stringify(row)]));
  const ids = new Set([...before.keys(), ...after.keys()]);
  return [...ids].filter((id) => before.get(id) !== after.get(id)).length;
}

/** Case and accents do not matter when looking for a name. */
export function hasName(name: string, wanted: string): boolean {
  const plain = (text: string) => text.normalize('NFD').replace(/\p{M}/gu, '').toLocaleLowerCase();
  return plain(name).includes(plain(wanted.trim()));
}
