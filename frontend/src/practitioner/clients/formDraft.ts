import { draft, dropDraft } from '../api/drafts';
import type { ClientForm } from './fields';

/** A half-filled form is kept under its name until it is saved; null while nothing was typed. */
export function formDraft(name: string) {
  const kept = draft(`form.${name}`);
  return {
    read: (): ClientForm | null => (kept.value ? (JSON.parse(kept.value) as ClientForm) : null),
    keep: (form: ClientForm) => void (kept.value = JSON.stringify(form)),
    drop: () => {
      kept.value = '';
      dropDraft(`form.${name}`);
    },
  };
}
