import { describe, expect, it } from 'vitest';
import type { Question } from '../../outbox';
import { entry } from '../testing/sample';
import { bodyOf, lastScreening, reasonsOf, screen, type Answers } from './screening';

const said = (text: string): Answers => ({
  regular_activity: text.includes('active'), known_disease: text.includes('disease'), signs_or_symptoms: text.includes('signs'),
  intensity: text.includes('hard') ? 'vigorous' : 'light_to_moderate',
});
const TABLE: [string, string, string][] = [
  ['', 'not_needed', 'not_needed'],
  ['signs', 'required', 'required'],
  ['disease', 'required', 'required'],
  ['disease signs', 'required', 'required'],
  ['active', 'not_needed', 'not_needed'],
  ['active signs', 'required', 'required'],
  ['active disease', 'not_needed', 'recommended'],
  ['active disease signs', 'required', 'required'],
];
const QUESTIONS: Question[] = [
  { code: 'active', question: '', help: '', maps_to: 'regular_activity' },
  { code: 'kidneys', question: '', help: '', maps_to: 'known_disease' },
  { code: 'chest', question: '', help: '', maps_to: 'signs_or_symptoms' },
];

describe('the health answers', () => {
  it.each(TABLE)('ask as the eight rows of the table do: %s', (text, light, hard) => {
    expect([screen(said(text)), screen(said(`${text} hard`))]).toEqual([light, hard]);
  });
  it('give a reason exactly when they ask for something', () => {
    for (const [text] of TABLE) {
      for (const answers of [said(text), said(`${text} hard`)]) expect(reasonsOf(answers).length > 0).toBe(screen(answers) !== 'not_needed');
    }
    expect(reasonsOf(said('active disease hard'))).toEqual(['whyDisease', 'whyVigorous']);
    expect(reasonsOf(said('disease signs hard'))).toEqual(['whySigns', 'whyDisease', 'whyInactive']);
  });
  it('are an entry only when every question has its own answer', () => {
    const all = { active: true, kidneys: false, chest: true };
    expect(bodyOf(QUESTIONS, all, 'vigorous')).toEqual({
      regular_activity: true, known_disease: false, signs_or_symptoms: true, intensity: 'vigorous', details: ['active', 'chest'],
    });
    expect(bodyOf(QUESTIONS, all, null)).toBeNull();
    expect(bodyOf(QUESTIONS, { active: true, chest: false }, 'vigorous')).toBeNull();
    expect(bodyOf([], all, 'vigorous')).toBeNull();
  });
  it('count as last given, unless taken back', () => {
    const first = entry('screening_answered', '2026-10-05T18:00', {});
    const second = entry('screening_answered', '2026-10-06T18:00', {});
    const back = entry('entry_withdrawn', '2026-10-06T18:01', { event_id: second.id });
    expect(lastScreening([second, first])).toBe(second);
    expect(lastScreening([second, first, back])).toBe(first);
    expect(lastScreening([])).toBeNull();
  });
});
