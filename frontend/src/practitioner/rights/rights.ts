/** What the person signed in may do, by what the server says of them. The server decides (decision 0012); the pages say it beforehand. */
import { computed } from '@preact/signals';
import { me } from '../api/session';
import { matchPath } from '../../shared/router';
import type { Role } from '../api/account';

/** look: everyone. write: whatever changes a record. own: what is an owner's. */
export type Right = 'look' | 'write' | 'own';

const RIGHTS: Record<Role, readonly Right[]> = { owner: ['look', 'write', 'own'], practitioner: ['look', 'write'], read_only: ['look'] };
const held = computed<readonly Right[]>(() => (me.value ? RIGHTS[me.value.practitioner.role] : ['look']));

export const may = (right: Right): boolean => held.value.includes(right);
export const mayWrite = computed(() => may('write'));
export const isOwner = computed(() => may('own'));

/** Pages that are nothing but one thing to be done: they are there for who may do it, and no link leads others to them. */
const CLOSED: readonly (readonly [pattern: string, needs: Right])[] = [
  ['/clients/new', 'write'],
  ['/exercises/own/new', 'write'],
  ['/exercises/own/:code', 'write'],
  ['/practice/people', 'own'],
  ['/practice/words', 'own'],
  ['/practice/audit', 'own'],
  ['/practice/status', 'own'],
];

/** What a page of this path needs of whoever opens it; a query is of no matter. */
export function neededBy(path: string): Right {
  const at = path.split('?')[0] ?? path;
  return CLOSED.find(([pattern]) => matchPath(pattern, at))?.[1] ?? 'look';
}
export const mayOpen = (path: string): boolean => may(neededBy(path));
