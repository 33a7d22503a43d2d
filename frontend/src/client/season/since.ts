/** The day this phone was paired: what was done before, on another phone, is not known here. */
import { signal } from '@preact/signals';
import { loadDraft, saveDraft } from '../../outbox';
import { today, type LocalDate } from '../../shared/dates';

const DRAFT = 'since';
export const since = signal<LocalDate>('0000-01-01');

export async function loadSince(): Promise<void> {
  since.value = (await loadDraft<LocalDate>(DRAFT).catch(() => undefined)) ?? since.value;
}

/** Kept when the same person pairs this phone again; without it all earlier days would look open. */
export async function markSince(): Promise<void> {
  const known = await loadDraft<LocalDate>(DRAFT).catch(() => undefined);
  since.value = known ?? today(new Date());
  if (!known) await saveDraft(DRAFT, since.value).catch(() => undefined); // earlier days look open then; nothing is lost
}
