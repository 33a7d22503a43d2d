/** Which circuits a season may take, and the season written into the program's draft. */
import type { Circuit, ProgramContent, Session } from '../../shared/program';
import { saveDraft } from '../editor/calls';
import { unsentIn } from '../editor/unsent';
import { me } from '../api/session';
import { t } from '../words';
import { layOut } from './calls';
import type { Desk } from './desk';

/** The circuits of a program or template; those that an earlier season made of another by taking rounds away are left out. */
export function circuitsOf(sessions: readonly Session[]): Circuit[] {
  const circuits = sessions.filter((one): one is Circuit => one.kind === 'circuit');
  const keys = new Set(circuits.map(({ key }) => key));
  return circuits.filter(({ key }) => !keys.has(key.replace(/-\d+r$/, '')) || !/-\d+r$/.test(key));
}

/** Circuits chosen to begin with: those of the season before, else all of the program. */
export function firstChoice(content: ProgramContent | null, before: readonly string[]): string[] {
  const keys = circuitsOf(content?.sessions ?? []).map(({ key }) => key);
  const chosen = before.filter((key) => keys.includes(key));
  return chosen.length > 0 ? chosen : keys.slice(0, CIRCUITS_MAX);
}
/** What the server takes. */
export const CIRCUITS_MAX = 6;

/** Whether edits of this program wait in this browser: a draft written past them would be lost to them. */
export const hasUnsent = (client: string): boolean => (unsentIn(localStorage, me.value?.practitioner.id ?? '', client).read()?.draft ?? null) !== null;

/** @throws RequestFailed */
export async function takeOver(desk: Desk, template: string | null, circuits: string[]): Promise<void> {
  const { client, content, base, etag } = desk.program;
  const { plan, trip } = desk.form.peek();
  const names = { long_walk: t('seaName_long'), short_walk: t('seaName_short'), cardio: t('seaName_cardio'), cardio_activity: t('seaName_activity'), rest: t('seaName_rest') };
  const laid = await layOut(client.id, { season: plan, content, template, circuits, trip_name: trip, names });
  await saveDraft(client.id, { content: laid, base_number: base }, etag);
  desk.taken();
}
