/**
 * Words typed and not yet sent, by name, so that changing the page or an ended session loses nothing. Held in memory only: they are
 * about a person's health, and a desk is shared.
 */
import { signal, type Signal } from '@preact/signals';

const drafts = new Map<string, Signal<string>>();

/** The draft of that name: read and write its `value`. `start` is what it says before anything was typed. */
export function draft(name: string, start = ''): Signal<string> {
  const known = drafts.get(name);
  if (known) return known;
  const made = signal(start);
  drafts.set(name, made);
  return made;
}

export function dropDraft(name: string): void {
  drafts.delete(name);
}

/** Let go of what was typed about one client. */
export function forgetDraftsOf(client: string): void {
  for (const name of drafts.keys()) if (name.includes(client)) drafts.delete(name);
}

export const forgetDrafts = (): void => drafts.clear();
