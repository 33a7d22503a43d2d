/** Writes the answers after a session. Nothing counts twice: a second finish replaces the first, which is then taken back. */
import { draftKey, events, record, type Bodies } from '../../../outbox';
import { attempt, withdraw } from '../../session/actions';
import { lastOf } from '../../session/log';
import type { Planned } from '../../session/plan';

export interface Answers {
  effort: number | null;
  minutes: number | null;
  line: string;
}

export const answersDraft = (planned_id: string): string => `after.${planned_id}`;

async function writeLine(planned: Planned, answers: Answers, keepLine: (left: string) => void): Promise<void> {
  const text = answers.line.trim();
  if (!text) return;
  const left = { ...answers, line: '' };
  await record('note_written', { text, planned_id: planned.planned_id }, { [draftKey(answersDraft(planned.planned_id))]: left });
  // Said already: should the finish fail, trying again must not say it twice.
  keepLine('');
}

async function writeFinish(planned: Planned, body: Bodies['session_finished']): Promise<void> {
  const before = lastOf(events.value, planned.planned_id, 'session_finished');
  await record('session_finished', body, { [draftKey(answersDraft(planned.planned_id))]: undefined });
  if (before) await withdraw(before.id);
}

export function finish(
  planned: Planned, answers: Answers & { effort: number; minutes: number }, keepLine: (left: string) => void,
): Promise<boolean> {
  const { effort, minutes } = answers;
  const about = { planned_id: planned.planned_id, program_version: planned.version.number };
  const body: Bodies['session_finished'] = { ...about, effort, minutes: Math.round(minutes) };
  return attempt(async () => {
    await writeLine(planned, answers, keepLine);
    await writeFinish(planned, body);
  });
}
