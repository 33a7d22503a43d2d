/** The sentences of readiness, made from codes and SI numbers: pure, so that an old note reads in the language of today. */
import { dayShort } from '../../shared/dates';
import { distance, height, mass } from '../../shared/units';
import type { ReadinessItem, ReadinessShown } from '../api/types';
import { t } from '../words';

type Evidence = ReadinessItem['evidence'][number];
type Part = ReadinessItem['parts'][number];
export type Mark = ReadinessItem['mark'];
export const MARKS: readonly Mark[] = ['shown', 'near', 'not_shown', 'unknown'];

/** One digit after the point, where there is any: errors of measurement have long tails. */
const short = (value: number): number => Math.round(value * 10) / 10;

const UNITS: Record<string, (value: number) => string> = {
  km: distance,
  m: height,
  kg: mass,
  days: (n) => t('rdyDaysOf', { n }),
  of_ten: (n) => t('rdyOfTen', { n }),
  repetitions: (n) => t('rdyReps', { n: Math.round(n) }),
  s: (n) => t('rdySeconds', { n: short(n) }),
  points: (n) => t('rdyPoints', { n: short(n) }),
};
const PART_UNITS: Partial<Record<ReadinessItem['subject'], string>> = { longest_day: 'km', ascent: 'm', descent: 'm', pack: 'kg' };

export const amount = (value: number, unit: string): string => UNITS[unit]?.(value) ?? String(value);
export const partAmount = (value: number, { subject }: Part): string => amount(value, PART_UNITS[subject] ?? '');

const WALKS: readonly ReadinessItem['subject'][] = ['longest_day', 'ascent', 'descent', 'pack', 'days_in_a_row'];
const isTest = ({ subject }: ReadinessItem): boolean => subject.includes('-');

function testWords({ asked, at_most, evidence }: ReadinessItem, shown: string, wanted: string): string {
  if (asked === null) return t('rdySays_no_norm', { shown });
  if (at_most) return t('rdySays_test_most', { asked: wanted, shown });
  return t(evidence.some(({ side }) => side !== null) ? 'rdySays_test' : 'rdySays_test_plain', { asked: wanted, shown });
}

function unknownWords(item: ReadinessItem, wanted: string): string {
  if (isTest(item)) return t('rdyUnknown_test');
  if (item.closing === 'say_trip') return t('rdyUnknown_trip');
  if (WALKS.includes(item.subject)) return t('rdyUnknown_walk', { asked: wanted });
  return t(`rdyUnknown_${item.subject as 'whole_day' | 'effort' | 'pain_at_rest'}`);
}

/** What is asked and what was shown, in one sentence. */
export function itemWords(item: ReadinessItem): string {
  const wanted = item.asked === null ? '' : amount(item.asked, item.unit);
  if (item.subject === 'whole_day' && item.parts.length > 0) return t('rdySays_whole_day');
  if (item.shown === null) return unknownWords(item, wanted);
  const shown = amount(item.shown, item.unit);
  if (isTest(item)) return testWords(item, shown, wanted);
  const subject = item.subject as 'longest_day' | 'ascent' | 'descent' | 'pack' | 'days_in_a_row' | 'effort' | 'pain_at_rest';
  return t(`rdySays_${subject}`, { asked: wanted, shown });
}

export const subjectWords = ({ subject }: Pick<ReadinessItem, 'subject'>): string => t(`rdy_${subject}`);

function rangeWords({ low, high, unit, subject }: ReadinessItem): string[] {
  if (low === null || high === null || low === high) return [];
  return [t(subject === 'effort' ? 'rdyRangeRated' : 'rdyRange', { low: amount(low, unit), high: amount(high, unit) })];
}

/** How sure it is. That the phone is silent is said once for all items, above them. */
export function doubtWords(item: ReadinessItem): string[] {
  const said = item.doubts.filter((doubt) => doubt !== 'silent');
  return [...rangeWords(item), ...said.map((doubt) => t(doubt === 'old' && isTest(item) ? 'rdyDoubt_old_test' : `rdyDoubt_${doubt as Exclude<typeof doubt, 'silent'>}`))];
}

/** What would close the gap, and whether there is time for it. */
export function closingWords(item: ReadinessItem): string[] {
  const { closing, asked, unit, weeks, in_time } = item;
  const values = { n: weeks ?? 0, asked: asked === null ? '' : amount(asked, unit) };
  const late = isTest(item) ? 'rdyNotInTimeTest' : 'rdyNotInTime';
  const time = closing === 'nothing' || in_time === null ? [] : [t(in_time ? 'rdyInTime' : late)];
  return [t(`rdyClose_${closing}`, values), ...time];
}

/** The name of a piece of evidence, as the link to it says. */
export function evidenceWords({ kind, day, value, side }: Evidence, { unit, subject }: ReadinessItem): string {
  const on = { day: dayShort(day), value: amount(value, unit) };
  if (kind === 'pain') return t('rdyPainOf', on);
  if (kind === 'walk') return subject === 'effort' ? t('rdyWalkRated', on) : t('rdyWalkOf', on);
  return side ? t('rdyTestSide', { ...on, side: t(`tst_${side}`) }) : t('rdyTestOf', on);
}

/** "3 shown, 2 near, 4 not shown, 3 unknown." */
export function countWords(items: readonly ReadinessItem[]): string {
  const of = (mark: Mark) => items.filter((one) => one.mark === mark).length;
  return t('rdyCount', { shown: of('shown'), near: of('near'), not_shown: of('not_shown'), unknown: of('unknown') });
}

/** "16 km, 900 m up, 800 m down, 9 kg on the back" */
export function dayWords(day: NonNullable<ReadinessShown['trip']>['days'][number]): string {
  if (day.distance_km === 0) return t('rdyRest');
  const heights = day.ascent_m === null || day.descent_m === null
    ? [t('rdyNoHeights')]
    : [t('rdyUp', { height: height(day.ascent_m) }), t('rdyDown', { height: height(day.descent_m) })];
  return [distance(day.distance_km), ...heights, ...(day.pack_kg === null ? [] : [t('rdyPack', { mass: mass(day.pack_kg) })])].join(', ');
}

/** What stands differently now than when a note was signed. */
export function changeWords(then: ReadinessShown, now: ReadinessShown): string[] {
  const before = new Map(then.items.map((item) => [item.subject, item.mark]));
  return now.items.filter(({ subject, mark }) => before.get(subject) !== mark).map((item) => {
    const was = before.get(item.subject);
    const after = t(`rdyMark_${item.mark}`);
    return was ? t('rdyChangedLine', { what: subjectWords(item), before: t(`rdyMark_${was}`), after }) : t('rdyChangedNew', { what: subjectWords(item), after });
  });
}
