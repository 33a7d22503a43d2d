/** From which day on this phone knows what was done: the day it was paired, or earlier once the practice told what earlier phones said. */
import { computed, signal } from '@preact/signals';
import { earlierSince, loadDraft, saveDraft } from '../../outbox';
import { today, type LocalDate } from '../../shared/dates';

const DRAFT = 'since';
const pairedOn = signal<LocalDate>('0000-01-01');
export const since = computed<LocalDate>(() => {
  const told = earlierSince.value;
  return told !== null && told < pairedOn.value ? told : pairedOn.value;
});

export async function loadSince(): Promise<void> {
  pairedOn.value = (await loadDraft<LocalDate>(DRAFT).catch(() => undefined)) ?? pairedOn.value;
}

/** Kept when the same person pairs this phone again; without it all earlier days would look open. */
export async function markSince(): Promise<void> {
  const known = await loadDraft<LocalDate>(DRAFT).catch(() => undefined);
  pairedOn.value = known ?? today(new Date());
  if (!known) await saveDraft(DRAFT, pairedOn.value).catch(() => undefined); // earlier days look open then; nothing is lost
}
