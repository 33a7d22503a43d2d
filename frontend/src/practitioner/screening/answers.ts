/** Answers to the questions, and what is still missing: pure. */
import type { ScreeningAnswers, ScreeningQuestions } from '../api/types';
import type { FieldErrors } from '../parts/ErrorSummary';
import { t } from '../words';

export type Said = Record<string, 'yes' | 'no'>;
export interface Answering { said: Said; intensity: ScreeningAnswers['intensity'] | null }
export const NOTHING_SAID: Answering = { said: {}, intensity: null };
type Questions = ScreeningQuestions['items'];

/** Silence is not a no: every question needs its answer. */
export function missing(questions: Questions, { said, intensity }: Answering): FieldErrors {
  const errors: FieldErrors = {};
  for (const { code, question } of questions) if (!said[code]) errors[`q.${code}`] = t('scrUnanswered', { question });
  if (!intensity) errors['q.intensity'] = t('scrUnanswered', { question: t('scrIntensity') });
  return errors;
}

/** What the table of the rule takes: yes to any question of a group makes the group true. */
export function answersOf(questions: Questions, { said, intensity }: Answering): { answers: ScreeningAnswers; details: string[] } {
  const yes = questions.filter(({ code }) => said[code] === 'yes');
  const has = (group: Questions[number]['maps_to']) => yes.some(({ maps_to }) => maps_to === group);
  return {
    answers: {
      regular_activity: has('regular_activity'), known_disease: has('known_disease'), signs_or_symptoms: has('signs_or_symptoms'),
      intensity: intensity ?? 'vigorous',
    },
    details: yes.map(({ code }) => code),
  };
}
