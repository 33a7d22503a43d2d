/**
 * What the phone says at once after a pain report, offline. It repeats the practice's own thresholds in words; it decides nothing.
 * The bands follow the pain-monitoring model (Silbernagel 2007, Thomee 1997): 0 to 2 is fine, 3 to 5 may be kept if it settles by
 * the next morning, 6 and more is too much. A practitioner may set other numbers for one person; they come with the settings.
 */
export interface PainThresholds {
  /** From this rating on the movement stops for today. 0 to 10. */
  pain_stop: number;
  /** From this rating on it is watched. 0 to 10. */
  acceptable_from: number;
}
/** Published bands, used until the practice has sent its own. */
export const PUBLISHED: PainThresholds = { pain_stop: 6, acceptable_from: 3 };

export type PainAdvice = 'stop' | 'watch' | 'fine';

export function painThresholds(settings: Partial<PainThresholds> | undefined): PainThresholds {
  return { pain_stop: settings?.pain_stop ?? PUBLISHED.pain_stop, acceptable_from: settings?.acceptable_from ?? PUBLISHED.acceptable_from };
}

export function adviceFor(rating: number, thresholds: PainThresholds): PainAdvice {
  if (rating >= thresholds.pain_stop) return 'stop';
  return rating >= thresholds.acceptable_from ? 'watch' : 'fine';
}

/** Feelings that ask for the practitioner before the movement goes on, whatever the number. House value. */
const ASK_FIRST: readonly string[] = ['numb', 'giving_way'];
export const asksFirst = (feels: readonly string[]): boolean => feels.some((feel) => ASK_FIRST.includes(feel));
