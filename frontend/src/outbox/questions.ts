/** The practice's health questions, fetched once a pairing so that they can be answered without a signal. */
import type { Database } from './database';
import { callQuestions, type Fetch } from './http';
import { readAll, storeReply } from './log';

export type Feeds = 'regular_activity' | 'known_disease' | 'signs_or_symptoms';
export interface Question {
  code: string;
  question: string;
  help: string;
  /** Which of the three inputs a yes makes true. */
  maps_to: Feeds;
}
export interface Questions {
  /** The pairing they were fetched for: a new pairing asks again. */
  device_id: string;
  items: Question[];
}
const FEEDS: readonly string[] = ['regular_activity', 'known_disease', 'signs_or_symptoms'];

function isQuestion(value: unknown): value is Question {
  const item = value as Partial<Question> | null;
  const texts = [item?.code, item?.question, item?.help].every((text) => typeof text === 'string');
  return texts && FEEDS.includes(item?.maps_to as string);
}

/** The answer, if it is one; a list in which one question cannot be read is none, since silence is not a no. */
export function readQuestions(text: string): Question[] | null {
  try {
    const { items } = JSON.parse(text) as { items?: unknown };
    return Array.isArray(items) && items.length > 0 && items.every(isQuestion) ? items : null;
  } catch {
    return null;
  }
}

/** Answers whether something is new. */
export async function takeQuestions(db: Database, fetch: Fetch): Promise<boolean> {
  const { device, questions } = (await readAll(db)).kept;
  if (!device || questions?.device_id === device.device_id) return false;
  const items = await callQuestions(fetch, device.token);
  if (!items) return false;
  await storeReply(db, device.device_id, { questions: { device_id: device.device_id, items } satisfies Questions });
  return true;
}
