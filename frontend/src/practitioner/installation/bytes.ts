import { localeTag } from '../../shared/words/mechanism';

const UNITS = ['byte', 'kilobyte', 'megabyte', 'gigabyte', 'terabyte'] as const;
const STEP = 1000;

/** A size as disks are sold: powers of a thousand, three digits at most. */
export function bytes(count: number): string {
  const at = count < STEP ? 0 : Math.min(UNITS.length - 1, Math.floor(Math.log10(count) / 3));
  const shown = new Intl.NumberFormat(localeTag(), { style: 'unit', unit: UNITS[at], maximumSignificantDigits: 3 });
  return shown.format(count / STEP ** at);
}
