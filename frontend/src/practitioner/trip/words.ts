/** Numbers of a trip as they are shown: rounded as far as they can be trusted. */
import { localeTag } from '../../shared/words/mechanism';
import type { LegDemand, TripLeg } from '../api/types';
import { t } from '../words';

/** Energy is told to 50 kcal: the models differ by more. */
const KCAL_STEP = 50;
const round = (value: number, step: number): number => Math.round(value / step) * step;

export const shown = (value: number, digits = 0): string => new Intl.NumberFormat(localeTag(), { maximumFractionDigits: digits }).format(value);
export const kcal = (value: number): string => shown(round(value, KCAL_STEP));
/** "5 h 20 min", to five minutes. */
export function hours(value: number): string {
  const minutes = round(value * 60, 5);
  return t('trpHours', { h: Math.floor(minutes / 60), min: minutes % 60 });
}
export const percent = (value: number): string => shown(value);
export const legTitle = (number: number, { day, name }: Pick<TripLeg | LegDemand, 'day' | 'name'>): string =>
  name ? t('trpLegNamed', { n: number, day, name }) : t('trpLegOfDay', { n: number, day });
