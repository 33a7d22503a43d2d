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

/** What happened: the reason for the place in the order. How much was done stands in numbers below it. */
export function happenedWords({ happened, reason }: Pick<CaseloadRow, 'happened' | 'reason'>): string {
  return reason.sentence || happened;
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
  if (suggestion?.action === 'decide') return { does: 'decide', to: `${person}?at=suggestions` };
  if (group === 'no_program') return { does: 'program', to: `${person}/program` };
  if (reason.rule === 'never_paired') return { does: 'phones', to: `${person}/phones` };
  if (reason.rule === 'refused_entries') return { does: 'look', to: `${person}?at=aside` };
  return suggestion ? { does: 'write', to: null } : null;
}

/** What a row says, without its place: whoever merely stands lower because another came in has not changed. */
const saying = ({ place: _, ...row }: CaseloadRow): string => JSON.stringify(row);

/** Length of the longest run of numbers that rise, not necessarily side by side: those who kept their order. */
function inOrder(places: readonly number[]): number {
  const longest: number[] = [];
  places.forEach((place, i) => longest.push(1 + Math.max(0, ...longest.filter((_, j) => j < i && (places[j] as number) < place))));
  return Math.max(0, ...longest);
}

/** How many people the news is about: new, gone, changed, or moved past others. */
export function countChanges(shown: readonly CaseloadRow[], latest: readonly CaseloadRow[]): number {
  const before = new Map(shown.map((row, i) => [row.client.id, { said: saying(row), i }]));
  const stayed = latest.filter(({ client }) => before.has(client.id));
  const changed = stayed.filter((row) => before.get(row.client.id)?.said !== saying(row));
  const same = stayed.filter((row) => !changed.includes(row)).map(({ client }) => before.get(client.id)?.i ?? 0);
  const cameOrWent = latest.length - stayed.length + (shown.length - stayed.length);
  return cameOrWent + changed.length + (same.length - inOrder(same));
}

/** Case and accents do not matter when looking for a name. */
export function hasName(name: string, wanted: string): boolean {
  const plain = (text: string) => text.normalize('NFD').replace(/\p{M}/gu, '').toLocaleLowerCase();
  return plain(name).includes(plain(wanted.trim()));
}
