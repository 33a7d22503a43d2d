/**
 * What the health answers ask for, said on the phone at once and offline: the table of Riebe 2015 (ACSM), as on the server, which
 * decides. Symptoms decide before disease, disease before habit. It is no diagnosis.
 */
import type { Bodies, Event, Question } from '../../outbox';
import { standing } from '../../outbox/fold';

export type Answers = Pick<Bodies['screening_answered'], 'regular_activity' | 'known_disease' | 'signs_or_symptoms' | 'intensity'>;
export type Outcome = 'not_needed' | 'recommended' | 'required';

export function screen({ regular_activity, known_disease, signs_or_symptoms, intensity }: Answers): Outcome {
  if (signs_or_symptoms || (known_disease && !regular_activity)) return 'required';
  return known_disease && intensity === 'vigorous' ? 'recommended' : 'not_needed';
}

export type Reason = 'whySigns' | 'whyDisease' | 'whyInactive' | 'whyVigorous';

/** Only what speaks for asking first, the weightiest first; empty when nothing does. */
export function reasonsOf(answers: Answers): Reason[] {
  const outcome = screen(answers);
  if (outcome === 'not_needed') return [];
  const all: [boolean, Reason][] = [
    [answers.signs_or_symptoms, 'whySigns'],
    [answers.known_disease, 'whyDisease'],
    [!answers.regular_activity, 'whyInactive'],
    [outcome === 'recommended', 'whyVigorous'],
  ];
  return all.filter(([holds]) => holds).map(([, reason]) => reason);
}

export type Said = Readonly<Record<string, boolean>>;

/** The body of the entry; null while a question has no answer: silence is not a no. */
export function bodyOf(questions: readonly Question[], said: Said, intensity: Answers['intensity'] | null): Bodies['screening_answered'] | null {
  if (intensity === null || questions.length === 0 || questions.some(({ code }) => typeof said[code] !== 'boolean')) return null;
  const yes = questions.filter(({ code }) => said[code]);
  const has = (input: Question['maps_to']) => yes.some(({ maps_to }) => maps_to === input);
  return {
    regular_activity: has('regular_activity'), known_disease: has('known_disease'), signs_or_symptoms: has('signs_or_symptoms'),
    intensity, details: yes.map(({ code }) => code),
  };
}

/** The answers that count: the newest ones that stand. */
export function lastScreening(events: readonly Event[]): Event | null {
  if (!events.some((event) => event.kind === 'screening_answered')) return null;
  return standing(events).filter((event) => event.kind === 'screening_answered').at(-1) ?? null;
}
