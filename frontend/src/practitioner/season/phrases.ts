/** Sessions, walks and weeks in words, in the units chosen. */
import { dayShort, type LocalDate } from '../../shared/dates';
import { distance, height, mass, type Quantity } from '../../shared/units';
import { t } from '../words';
import { sumOf, type Asked } from './compare';
import type { Activity, Level, ProposedSession, Shortfall } from './types';

const NAMES = { strength: 'seaStrength', walk: 'seaWalk', cardio: 'seaCardio' } as const satisfies Record<Activity, string>;
export const activityName = (activity: Activity): string => t(NAMES[activity]);
export const walkWords = (walk: Level): string => t('seaWalkWords', { km: distance(walk.distance_km), ascent: height(walk.ascent_m), pack: mass(walk.pack_kg) });
/** "Sat 28 Nov" */
export const dayLabel = (date: LocalDate): string => dayShort(date);

/** What stands on a session's button below its name. */
export function factsOf({ minutes, walk, pinned, locked }: ProposedSession): string {
  return [t('seaMinutes', { n: minutes }), walk ? walkWords(walk) : '', locked ? t('seaLocked') : pinned ? t('seaStays') : ''].filter(Boolean).join(', ');
}

export function weekWords(week: readonly Asked[]): string {
  if (week.length === 0) return t('seaNothingPlanned');
  const { strength, cardio, walks, longest } = sumOf(week);
  const parts = [
    strength > 0 && t('seaSumStrength', { n: strength }),
    longest && t('seaSumWalks', { n: walks, walk: walkWords(longest) }),
    cardio > 0 && t('seaSumCardio', { n: cardio }),
  ];
  return `${parts.filter(Boolean).join('; ')} (${week.map(({ date }) => dayShort(date)).filter((day, i, all) => all.indexOf(day) === i).join(', ')})`;
}

const SHOWS = { distance_km: distance, ascent_m: height, pack_kg: mass } as const satisfies Record<Shortfall['thing'], unknown>;
export const measured = (thing: Shortfall['thing'], value: number): string => SHOWS[thing](value);

export const QUANTITY = { distance_km: 'distance', ascent_m: 'height', pack_kg: 'mass' } as const satisfies Record<Shortfall['thing'], Quantity>;
