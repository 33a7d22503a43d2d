/** Plausible ranges, as the server has them: a draft outside of them could not be kept. */
export interface Range {
  min: number;
  max: number;
  whole: boolean;
}
const whole = (min: number, max: number): Range => ({ min, max, whole: true });
const any = (min: number, max: number): Range => ({ min, max, whole: false });

export const LIMITS = {
  rounds: whole(1, 10),
  effort: whole(0, 10),
  minutes: whole(1, 1440),
  reps: whole(1, 50),
  hold_s: whole(1, 300),
  load_kg: any(0, 200),
  tempo_down_s: whole(1, 10),
  rest_s: whole(0, 600),
  distance_km: any(0.1, 100),
  climb_m: whole(0, 5000),
  pack_kg: any(0, 60),
} as const satisfies Record<string, Range>;

export const SESSIONS_MAX = 150;
export const PRESCRIPTIONS_MAX = 30;
/** Planned sessions on one date. */
export const PER_DATE_MAX = 4;
export const TITLE_LETTERS_MAX = 120;

/** The number if it lies in the range (and is whole where it must be); else null. */
export function within(value: number | null, range: Range): number | null {
  if (value === null || value < range.min || value > range.max) return null;
  return range.whole && !Number.isInteger(value) ? null : value;
}
