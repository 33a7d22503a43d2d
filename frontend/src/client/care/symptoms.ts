/**
 * Signs to stop for, most urgent first, and how soon help is needed. Usual first-aid and pre-participation cautions in plain words;
 * they defer to local emergency services and to the practice, and are never a diagnosis.
 */
export type Urgency = 'now' | 'same_day' | 'ask';

export const SYMPTOMS = {
  chest_pain: 'now',
  fainting: 'now',
  breathless: 'now',
  one_sided_weakness: 'now',
  worst_headache: 'now',
  heat_confusion: 'now',
  saddle_numbness: 'now',
  bladder_or_bowel: 'now',
  palpitations: 'same_day',
  calf_swelling: 'same_day',
  cannot_bear_weight: 'same_day',
  heel_snap: 'same_day',
  hot_joint_fever: 'same_day',
  dark_urine: 'same_day',
  night_bone_pain: 'ask',
  fever: 'ask',
  other: 'ask',
} as const satisfies Record<string, Urgency>;
export type Symptom = keyof typeof SYMPTOMS;

export const URGENCIES: readonly Urgency[] = ['now', 'same_day', 'ask'];
export const symptomsOf = (urgency: Urgency): Symptom[] =>
  (Object.keys(SYMPTOMS) as Symptom[]).filter((symptom) => SYMPTOMS[symptom] === urgency);
export const isSymptom = (text: string): text is Symptom => Object.hasOwn(SYMPTOMS, text);
