/** What an answer to a flag needs and what it says afterwards: pure. */
import { dayShort, today } from '../../shared/dates';
import type { Action, Decided, Decision, Flag, Rule } from '../api/types';
import { t } from '../words';

export interface Answer { action: Action; note: string; message: string }
export type Lacks = { note?: string; message?: string };

const SENDS: readonly Action[] = ['hold', 'message'];
const NEEDS_NOTE: readonly Action[] = ['close', 'clear'];

/** What is still missing before the answer can be given. */
export function lacks({ action, note, message }: Answer): Lacks {
  if (NEEDS_NOTE.includes(action) && !note.trim()) return { note: t(action === 'clear' ? 'clearNoteMissing' : 'noteMissing') };
  if (SENDS.includes(action) && !message.trim()) return { message: t('messageNeeded') };
  return {};
}

/** What is sent: the message goes only with answers that are messages, whatever stands in its field. */
export function bodyOf({ action, note, message }: Answer): { action: Action; note?: string; message?: string } {
  return { action, ...(note.trim() && { note: note.trim() }), ...(SENDS.includes(action) && { message: message.trim() }) };
}

/** What the button says. After a red flag there is no dose to hold: training stops. */
export const answerWords = (action: Action, rule: Rule): string =>
  t(action === 'hold' && rule === 'red_flag_symptom' ? 'answer_hold_symptom' : `answer_${action}`);

/** Answers that are given with words: pressing them opens the words, and a second button gives the answer. */
export const takesWords = (action: Action): boolean => NEEDS_NOTE.includes(action) || SENDS.includes(action);

/** What the button says that gives an answer whose words are open. */
export function giveWords(action: Action, rule: Rule): string {
  if (action === 'hold') return t(rule === 'red_flag_symptom' ? 'answer_hold_symptom' : 'holdNow');
  if (action === 'clear') return t('clearNow');
  return t(action === 'close' ? 'closeNow' : 'messageNow');
}

/** "Silbernagel and others 2007": the names without initials; the whole citation stands beside it on demand. */
export function shortCitation({ authors, year }: Pick<Flag['source'], 'authors' | 'year'>): string {
  const names = authors.split(/[,;]\s*/).map((name) => name.replace(/(\s[A-Z]{1,3})$/, '')).filter(Boolean);
  const [first = '', second = ''] = names;
  if (names.length === 2) return t('citeTwo', { first, second, year });
  return names.length < 2 ? `${first} ${year}` : t('citeMore', { first, year });
}

/** What became of it, in one sentence. */
export function decidedWords(action: Action, { program_number }: Pick<Decided, 'program_number'>): string {
  if (program_number !== null) return t('decidedPublished', { number: program_number });
  if (SENDS.includes(action)) return t('decidedMessage');
  if (action === 'clear') return t('decidedCleared');
  return t(action === 'close' ? 'decidedClosed' : 'decidedAcknowledged');
}

/** The suggested answer first, then the others in the order of the server; closing last. */
export function orderedAnswers({ answers, suggestion }: { answers: readonly { action: Action }[]; suggestion: Flag['suggestion'] }): Action[] {
  const rank = (action: Action) => (action === suggestion?.action ? 0 : action === 'close' ? 2 : 1);
  return answers.map(({ action }) => action).sort((a, b) => rank(a) - rank(b));
}

/** "Wed 25 Nov, Maren Brandvold: Ease off one rung, version 7. “Called.”" */
export function decisionWords({ action, note, decided_at, by, program_number }: Decision): string {
  const answer = t(`answer_${action}`);
  const what = program_number === null ? answer : t('decisionVersion', { what: answer, number: program_number });
  const line = t('decisionLine', { day: dayShort(today(new Date(decided_at))), by, what });
  return note ? t('decisionWithNote', { line, note }) : line;
}
