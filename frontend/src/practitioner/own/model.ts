/** An exercise of the practice's own as it is written, and the steps of writing it. Every value is immutable. */
import type { Schemas } from '../api/types';

export type Movement = Schemas['Movement'];
export type KeyPose = Movement['keys'][string];
export type Text = Schemas['ExerciseText-Input'];
export type Rung = Schemas['VariantText'];
export type Own = Schemas['OwnOut'];
export type Finding = Schemas['FindingOut'];
export type View = Movement['views'][number];

export interface Form {
  text: Text;
  poses: Record<string, Movement>;
}

export const RUNGS_MAX = 5;
export const KEYS_MAX = 9;
const STRIP_MAX = 4;
/** Key times are even hundredths: the samples of the drawing fall on them. */
const SAMPLE_STEPS = 50;

export const emptyRung = (variant: string): Rung => ({
  variant, name: '', short: '', sides: 'both', kit: [], how: ['', ''], dose: { reps: [8, 12] }, load: 'none',
});

export const emptyForm = (): Form => ({
  text: { name: '', trains: [], loads: [], why: '', sides: 'both', cues: ['', '', ''], faults: [{ see: '', instead: '' }], cautions: [''], ladder: [emptyRung('v1')] },
  poses: {},
});

export const formOf = ({ text, poses }: Own): Form => ({ text, poses: poses as Record<string, Movement> });

/** The code of a new variant: codes that were once used do not come again. */
export function nextVariant(ladder: readonly Rung[]): string {
  const used = ladder.map(({ variant }) => Number(/^v(\d+)$/.exec(variant)?.[1] ?? 0));
  return `v${Math.max(0, ...used) + 1}`;
}

/** The exercise is done as its easiest variant is. */
export function withLadder(form: Form, ladder: Rung[]): Form {
  const kept = new Set(ladder.map(({ variant }) => variant));
  const poses = Object.fromEntries(Object.entries(form.poses).filter(([variant]) => kept.has(variant)));
  return { text: { ...form.text, ladder, sides: ladder[0]?.sides ?? form.text.sides }, poses };
}

export const withRung = (form: Form, at: number, rung: Rung): Form => withLadder(form, form.text.ladder.map((one, i) => (i === at ? rung : one)));

export function withPoses(form: Form, variant: string, movement: Movement | null): Form {
  const { [variant]: _, ...others } = form.poses;
  return { ...form, poses: movement ? { ...others, [variant]: movement } : others };
}

/** What the server takes: empty lines that may be left empty are none. */
export function bodyOf({ text, poses }: Form): Form {
  const told = (lines: string[], least: number) => lines.filter((line, i) => line.trim() || i < least).map((line) => line.trim());
  const ladder = text.ladder.map((rung) => ({ ...rung, how: told(rung.how, 2) }));
  return { text: { ...text, cues: told(text.cues, 3), cautions: told(text.cautions, 1), ladder }, poses };
}

/** Names of the key poses in order of time. */
export const keyNames = (movement: Movement): string[] => Object.keys(movement.keys).sort((a, b) => movement.keys[a]!.t - movement.keys[b]!.t);

function laid(movement: Movement, names: string[], poses: Record<string, KeyPose>): Movement {
  const at = (i: number) => (names.length === 1 ? 0 : Math.round((i / (names.length - 1)) * SAMPLE_STEPS) / SAMPLE_STEPS);
  const keys = Object.fromEntries(names.map((name, i) => [name, { ...poses[name]!, t: at(i) }]));
  const poster = names.includes(movement.poster) ? movement.poster : names[0]!;
  const every = Math.max(1, (names.length - 1) / (STRIP_MAX - 1));
  const shown = names.length <= STRIP_MAX ? names : [0, 1, 2, 3].map((i) => names[Math.round(i * every)]!);
  return { ...movement, keys, poster, strip: shown, cycle: false };
}

/** A pose like this one after it; two alike are a pause. All poses are then evenly apart. */
export function addKey(movement: Movement, after: string): { movement: Movement; key: string } {
  const names = keyNames(movement);
  let number = names.length + 1;
  while (movement.keys[`p${number}`]) number += 1;
  const key = `p${number}`;
  names.splice(names.indexOf(after) + 1, 0, key);
  return { movement: laid(movement, names, { ...movement.keys, [key]: movement.keys[after]! }), key };
}

export const removeKey = (movement: Movement, key: string): Movement =>
  laid(movement, keyNames(movement).filter((name) => name !== key), movement.keys);
