/** Publishing: one request guarded by the version it was made from, then the message that goes with it. */
import { failureFrom, type Failure } from '../api/request';
import { sendMessage } from '../api/calls';
import { publish, readCurrent } from './calls';
import type { Editor } from './editor';

export type Outcome =
  | { kind: 'published'; number: number; messageFailed: Failure | null }
  /** A colleague was faster; both versions are now shown beside each other. */
  | { kind: 'stale' }
  | { kind: 'failed'; failure: Failure };

/** The tag of the version that the draft was begun from; "0" before the first. */
const tagOf = (editor: Editor): string => `"${editor.base.peek()?.number ?? 0}"`;

async function failed(editor: Editor, failure: Failure): Promise<Outcome> {
  if (failure.kind !== 'problem' || failure.problem.status !== 412) return { kind: 'failed', failure };
  const current = await readCurrent(editor.client.peek().id);
  editor.theirs.value = current?.data ?? null;
  return { kind: 'stale' };
}

async function send(editor: Editor, message: string): Promise<Failure | null> {
  if (message.trim() === '') return null;
  try {
    await sendMessage(editor.client.peek().id, message);
    return null;
  } catch (error) {
    return failureFrom(error);
  }
}

/** Publish what is on the page. `note` is for the record, `message` goes to the client's phone. */
export async function publishNow(editor: Editor, note: string, message: string): Promise<Outcome> {
  const content = editor.content.peek();
  if (!content) return { kind: 'stale' };
  await editor.keeper.halt();
  try {
    const { data } = await publish(editor.client.peek().id, content, note, tagOf(editor));
    editor.publishedAs(data, content);
    return { kind: 'published', number: data.number, messageFailed: await send(editor, message) };
  } catch (error) {
    void editor.keeper.flush();
    return failed(editor, failureFrom(error)).catch((again: unknown) => ({ kind: 'failed', failure: failureFrom(again) }));
  }
}
