/**
 * A sign to stop for stops training on this phone, that day and later, until the practice has cleared that very entry or the person
 * has taken it back (decision 0004). No other answer lifts the stop. Pure.
 */
import type { Event, FlagAnswer } from '../../outbox';
import { standing } from '../../outbox/fold';
import { isSymptom, SYMPTOMS, URGENCIES, type Symptom } from './symptoms';

/** A sign that a newer version of the app may know is treated as the last of ours: stop and ask first. */
export const symptomOf = (event: Event): Symptom => {
  const symptom = String(event.body.symptom);
  return isSymptom(symptom) ? symptom : 'other';
};

const urgency = (event: Event): number => URGENCIES.indexOf(SYMPTOMS[symptomOf(event)]);

function reported(events: readonly Event[]): Event[] {
  // Putting a long log in order costs time at each stone; most people never report a sign.
  if (!events.some((event) => event.kind === 'symptom_reported')) return [];
  return standing(events).filter((event) => event.kind === 'symptom_reported');
}

const clears = (answers: readonly FlagAnswer[]) => answers.filter((answer) => answer.action === 'clear');

/** The reports that stop training now, the most urgent first. */
export function locksOf(events: readonly Event[], answers: readonly FlagAnswer[]): Event[] {
  const cleared = new Set(clears(answers).flatMap((answer) => answer.event_ids ?? []));
  return reported(events).filter((event) => !cleared.has(event.id)).sort((a, b) => urgency(a) - urgency(b));
}

export interface Cleared {
  /** Names this clearing: the flag and when it was decided. */
  key: string;
  symptoms: Symptom[];
}

/** What the practice has cleared of this phone's own reports, oldest first. */
export function clearedOf(events: readonly Event[], answers: readonly FlagAnswer[]): Cleared[] {
  const own = reported(events);
  return clears(answers)
    .map((answer) => ({
      key: `${answer.flag_id} ${answer.decided_at}`,
      symptoms: [...new Set(own.filter((event) => answer.event_ids?.includes(event.id)).map(symptomOf))],
    }))
    .filter((cleared) => cleared.symptoms.length > 0);
}
