/** A dose in words, one place for every page: the words on a stone, in a row and in the ear must agree. */
import type { Prescription } from './program';
import { mass } from './units';
import { s } from './words/shared';

type Dose = Pick<Prescription, 'sides' | 'reps_low' | 'reps_high' | 'hold_s' | 'load_kg' | 'tempo_down_s'>;

function amount(dose: Dose): string {
  if (dose.hold_s !== null) return s('doseHold', { seconds: dose.hold_s });
  const [low, high] = [dose.reps_low ?? 0, dose.reps_high ?? dose.reps_low ?? 0];
  return low === high ? s('doseReps', { n: low }) : s('doseRange', { low, high });
}

/** "8 to 10 each side", "hold 30 s each side, with 6 kg, 3 s down". */
export function doseWords(dose: Dose): string {
  const extras = [
    dose.load_kg ? s('doseLoad', { load: mass(dose.load_kg) }) : '',
    dose.tempo_down_s ? s('doseTempo', { seconds: dose.tempo_down_s }) : '',
  ];
  return [`${amount(dose)} ${s(dose.sides === 'each' ? 'doseEach' : 'doseBoth')}`, ...extras].filter(Boolean).join(', ');
}

/** What fits on a stone: `{ top: '8', under: 'each' }`, `{ top: '30', under: 'sec' }`, `{ top: '15', under: 'both' }`. */
export function stoneLabel(dose: Dose): { top: string; under: string } {
  if (dose.hold_s !== null) return { top: String(dose.hold_s), under: s('stoneSeconds') };
  return { top: String(dose.reps_low ?? ''), under: s(dose.sides === 'each' ? 'stoneEach' : 'stoneBoth') };
}

/** For the ear, in the order of the visible words: "8 each side, up to 10". */
export function spokenDose(dose: Dose): string {
  const side = s(dose.sides === 'each' ? 'doseEach' : 'doseBoth');
  if (dose.hold_s !== null) return `${s('spokenSeconds', { seconds: dose.hold_s })} ${side}`;
  const upTo = dose.reps_high !== null && dose.reps_high !== dose.reps_low ? `, ${s('spokenUpTo', { high: dose.reps_high })}` : '';
  return `${dose.reps_low ?? ''} ${side}${upTo}`;
}
