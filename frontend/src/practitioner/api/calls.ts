/** Every write of these pages, one function each. All throw RequestFailed. */
import { request } from './request';
import type { Action, Client, ClientFields, Decided, Device, Invitation, Message, Retry } from './types';

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
