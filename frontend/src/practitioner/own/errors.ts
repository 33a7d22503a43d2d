/** What is not in order in the words of an exercise, by the name of its field; the server refuses the same. */
import type { FieldErrors } from '../parts/ErrorSummary';
import type { Form, Rung } from './model';
import { o } from './words';

const SENTENCE = /^\p{Lu}.{1,138}\.$/u;
const SHORT_MAX = 14;
const NAME_MAX = 60;
/** The server's ranges of doses. */
export const DOSES = { reps: [1, 50], hold_s: [1, 300] } as const;

export function formErrors(form: Form): FieldErrors {
  const { text } = form;
  const errors: Record<string, string> = {};
  const sentence = (name: string, what: string, line: string) => {
    if (!SENTENCE.test(line.trim())) errors[name] = o('errSentence', { what });
  };
  if (!text.name.trim() || text.name.length > NAME_MAX) errors.name = o('errName');
  sentence('why', o('why'), text.why);
  if (text.trains.length === 0) errors.trains = o('errTrains');
  if (text.loads.length === 0) errors.loads = o('errLoads');
  text.cues.forEach((line, i) => (line.trim() || i < 3) && sentence(`cue.${i}`, o('cue', { n: i + 1 }), line));
  if (repeats(text.cues)) errors['cue.0'] ??= o('errCues');
  text.faults.forEach((fault, i) => {
    sentence(`fault.${i}.see`, o('faultSee', { n: i + 1 }), fault.see);
    sentence(`fault.${i}.instead`, o('faultInstead', { n: i + 1 }), fault.instead);
  });
  text.cautions.forEach((line, i) => (line.trim() || i < 1) && sentence(`caution.${i}`, o('caution', { n: i + 1 }), line));
  text.ladder.forEach((rung, i) => rungErrors(rung, i, errors, sentence));
  if (repeats(text.ladder.map(({ name }) => name))) errors['rung.0.name'] ??= o('errTwins');
  return errors;
}

const repeats = (lines: readonly string[]): boolean => {
  const told = lines.map((line) => line.trim()).filter(Boolean);
  return new Set(told).size < told.length;
};

function rungErrors(rung: Rung, i: number, errors: Record<string, string>, sentence: (name: string, what: string, line: string) => void): void {
  const what = o('rung', { n: i + 1 });
  if (!rung.name.trim() || rung.name.length > NAME_MAX) errors[`rung.${i}.name`] = o('errWords', { what: o('rungName', { n: i + 1 }) });
  if (rung.short.length > SHORT_MAX) errors[`rung.${i}.short`] = o('rungShort');
  if (rung.kit.length > 4) errors[`rung.${i}.kit`] = o('errKit', { what });
  rung.how.forEach((line, at) => (line.trim() || at < 2) && sentence(`rung.${i}.how.${at}`, `${what}, ${o('step', { n: at + 1 })}`, line));
  const [kind, [low, high]] = 'reps' in rung.dose ? (['reps', rung.dose.reps] as const) : (['hold_s', rung.dose.hold_s] as const);
  const [min, max] = DOSES[kind];
  const whole = Number.isInteger(low) && Number.isInteger(high) && low >= min && high <= max && low <= high;
  if (!whole) errors[`rung.${i}.low`] = o('errDose', { what, min, max });
}
