/**
 * What the phone says at once after a pain report, offline. It repeats the practice's own thresholds in words; it decides nothing.
 * The bands follow the pain-monitoring model (Silbernagel 2007, Thomee 1997): 0 to 2 is fine, 3 to 5 may be kept if it settles by
 * the next morning, 6 and more is too much. A practitioner may set other numbers for one person; they come with the settings.
 * Same zones and advice as on the server; tests/vectors/pain_cases.json holds both to them.
 */
export interface PainThresholds {
  /** From this rating on the movement stops for today. 0 to 10. */
  pain_stop: number;
  /** From this rating on it is watched. 0 to 10. */
  acceptable_from: number;
  /** What is usual for this person; in the morning, more than this has not settled. 0 to 10. */
  usual_pain: number;
}
/** Published bands, and no usual pain until the practitioner has asked: used until the practice has sent its own. */
export const PUBLISHED: PainThresholds = { pain_stop: 6, acceptable_from: 3, usual_pain: 0 };

export type Zone = 'safe' | 'acceptable' | 'high';
export type DoseAdvice = 'progress_allowed' | 'hold' | 'regress';

export function painThresholds(settings: Partial<PainThresholds> | undefined): PainThresholds {
  return {
    pain_stop: settings?.pain_stop ?? PUBLISHED.pain_stop,
    acceptable_from: settings?.acceptable_from ?? PUBLISHED.acceptable_from,
    usual_pain: settings?.usual_pain ?? PUBLISHED.usual_pain,
  };
}

export function zoneOf(rating: number, thresholds: PainThresholds): Zone {
  if (rating >= thresholds.pain_stop) return 'high';
  return rating >= thresholds.acceptable_from ? 'acceptable' : 'safe';
}

export const hasSettled = (next_morning: number, thresholds: PainThresholds): boolean => next_morning <= thresholds.usual_pain;

/** What the model says of the dose, by the worst rating of a session and the rating of the next morning. */
export function adviseDose(during: number, next_morning: number, thresholds: PainThresholds): DoseAdvice {
  const zone = zoneOf(during, thresholds);
  if (zone === 'high' || !hasSettled(next_morning, thresholds)) return 'regress';
  return zone === 'acceptable' ? 'hold' : 'progress_allowed';
}

/** Feelings that ask for the practitioner before the movement goes on, whatever the number. House value. */
const ASK_FIRST: readonly string[] = ['numb', 'giving_way'];
export const asksFirst = (feels: readonly string[]): boolean => feels.some((feel) => ASK_FIRST.includes(feel));
