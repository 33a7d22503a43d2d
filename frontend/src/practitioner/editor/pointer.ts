/** JSON pointers (RFC 6901) into a content: where a problem is, what mends it, and which field shows it. */
import type { ProgramContent, Session } from '../../shared/program';

export interface Mend {
  pointer: string;
  value: unknown;
}

const stepsOf = (pointer: string): string[] =>
  pointer.split('/').slice(1).map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));

function put(node: unknown, steps: readonly string[], value: unknown): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  if (Array.isArray(node)) return node.map((item, i) => (String(i) === step ? put(item, rest, value) : item));
  if (typeof node !== 'object' || node === null || !Object.hasOwn(node, step)) return node;
  return { ...node, [step]: put((node as Record<string, unknown>)[step], rest, value) };
}

/** The content with every mend in it; a pointer that leads nowhere changes nothing. */
export const mend = (content: ProgramContent, mends: readonly Mend[]): ProgramContent =>
  mends.reduce((now, one) => put(now, stepsOf(one.pointer), one.value) as ProgramContent, content);

/** The id of the field that shows a place of the content. */
export const fieldId = (pointer: string): string => `at${pointer.replaceAll('/', '-')}`;

/** The fields that may show a place, the nearest first: `/sessions/0/name`, `/sessions/0`, `/sessions`. */
export function fieldIds(pointer: string): string[] {
  const steps = pointer.split('/').slice(1);
  return steps.map((_, i) => fieldId(`/${steps.slice(0, steps.length - i).join('/')}`));
}

/** What must be chosen for the place to be in view. */
export function shownBy(content: ProgramContent, pointer: string): { session: Session | null; day: number | null } {
  const [list, index] = stepsOf(pointer);
  const place = Number(index);
  if (list === 'sessions') return { session: content.sessions[place] ?? null, day: null };
  return { session: null, day: list === 'days' && content.days[place] ? place : null };
}
