/** What the practice wrote, newest first: messages, and answers to what was reported. */
import { computed } from '@preact/signals';
import { answers, events, messages } from '../../../outbox';

export interface News {
  /** The message's own id; null for an answer, which has none to be marked as read. */
  id: string | null;
  key: string;
  from: string | null;
  text: string;
  at: string;
}

/** An answer to a flag whose text also came as a message stands there once, as the message. */
export const news = computed<News[]>(() => {
  const written = messages.value.map((one): News => ({ id: one.id, key: one.id, from: one.from, text: one.text, at: one.sent_at }));
  const told = new Set(messages.value.map((one) => one.flag_id).filter(Boolean));
  const answered = answers.value
    .filter((one) => one.message && !told.has(one.flag_id))
    .map((one): News => ({ id: null, key: `${one.flag_id} ${one.decided_at}`, from: null, text: one.message ?? '', at: one.decided_at }));
  return [...written, ...answered].sort((a, b) => Date.parse(b.at) - Date.parse(a.at));
});

const readIds = computed(() => new Set(events.value.filter((event) => event.kind === 'message_read').map((event) => event.body.message_id)));
export const isUnread = (one: News): boolean => one.id !== null && !readIds.value.has(one.id);
export const unreadCount = computed(() => news.value.filter(isUnread).length);
