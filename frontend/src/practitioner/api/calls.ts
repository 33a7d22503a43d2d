/** Every write of these pages, one function each. All throw RequestFailed. */
import { request } from './request';
import type { Action, Choice, Client, ClientFields, Decided, Device, Invitation, Message, Progressed, ReadinessNote, Retry, Screening, ScreeningAnswers, TestResult, Verdict } from './types';

const data = async <T>(method: 'POST' | 'PATCH', path: string, body?: unknown, ifMatch?: string | null): Promise<T> =>
  (await request<T>(method, path, { body, ifMatch })).data;

export const createClient = (fields: ClientFields) => data<Client>('POST', '/clients', fields);
/** With the ETag of what was read, a colleague's change in between is answered 412 and nothing is overwritten. */
export const updateClient = (id: string, fields: Partial<ClientFields> & { archived?: boolean }, ifMatch?: string | null) =>
  data<Client>('PATCH', `/clients/${id}`, fields, ifMatch);

export const invite = (client: string, delivery: Invitation['delivery']) => data<Invitation>('POST', `/clients/${client}/invitations`, { delivery });
export const revokeDevice = (device: string) => data<Device>('POST', `/devices/${device}/revocations`);
export const confirmPairing = (pairing: string, check_number: string) => data<Device>('POST', `/pairings/${pairing}/confirmations`, { check_number });
export const refusePairing = (pairing: string) => data<Device>('POST', `/pairings/${pairing}/refusals`);

export const sendMessage = (client: string, text: string) => data<Message>('POST', `/clients/${client}/messages`, { text });
export const decide = (flag: string, answer: { action: Action; note?: string; message?: string }) => data<Decided>('POST', `/flags/${flag}/decisions`, answer);
export const retryEntry = (client: string, event: string) =>
  data<Retry>('POST', `/clients/${client}/refused-events/${encodeURIComponent(event)}/retries`);

/** Decide about suggestions: all that is accepted becomes one version. */
export const decideProgressions = (client: string, program_number: number, decisions: readonly Choice[]) =>
  data<Progressed>('POST', `/clients/${client}/progressions`, { program_number, decisions });

export const screenClient = (client: string, answers: ScreeningAnswers, details: readonly string[]) =>
  data<Screening>('POST', `/clients/${client}/screenings`, { answers, details });
export const recordClearance = (client: string, clearance: { given_by: string; given_on: string | null; note: string }) =>
  data<unknown>('POST', `/clients/${client}/clearances`, clearance);

export interface TestEntry { code: string; value: number; side: 'left' | 'right' | null; taken_on: string | null; protocol: Record<string, string>; note: string }
export const recordTest = (client: string, entry: TestEntry) => data<TestResult>('POST', `/clients/${client}/tests`, entry);
export const withdrawTest = (result: string) => data<unknown>('POST', `/tests/${result}/withdrawals`);
export const rateActivities = (client: string, activities: readonly { name: string; rating: number }[], taken_on: string | null = null) =>
  data<unknown>('POST', `/clients/${client}/functional-scales`, { activities, taken_on });
export const withdrawRating = (scale: string) => data<unknown>('POST', `/functional-scales/${scale}/withdrawals`);

/** Sign a note for what `digest` names; 412 when something has changed since. */
export const signReadiness = (client: string, note: { verdict: Verdict; words: string; digest: string }) =>
  data<ReadinessNote>('POST', `/clients/${client}/readiness-notes`, note);
