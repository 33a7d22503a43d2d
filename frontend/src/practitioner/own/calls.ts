/** What the pages of own exercises ask the server. All throw RequestFailed. */
import { request, type Reply } from '../api/request';
import type { Schemas } from '../api/types';
import { bodyOf, type Form, type Movement, type Own } from './model';

const at = (code: string) => `/exercises/own/${encodeURIComponent(code)}`;

export const readOwn = (code: string): Promise<Reply<Own>> => request<Own>('GET', at(code));
export const createOwn = (form: Form): Promise<Reply<Own>> => request<Own>('POST', '/exercises/own', { body: bodyOf(form) });
export const changeOwn = (code: string, form: Form, ifMatch: string | null): Promise<Reply<Own>> => request<Own>('PUT', at(code), { body: bodyOf(form), ifMatch });
export const archiveOwn = (code: string, archived: boolean): Promise<Reply<Own>> => request<Own>('PATCH', at(code), { body: { archived } });

export type Ask = Schemas['PreviewBody'];
export type Preview = Schemas['PreviewOut'];
export const preview = async (body: Ask): Promise<Preview> => (await request<Preview>('POST', '/exercises/preview', { body })).data;

export async function readPoses(code: string, variant: string, key: string | null): Promise<Movement> {
  const asked = new URLSearchParams({ variant, ...(key && { key }) });
  return (await request<Schemas['StartOut']>('GET', `/exercises/${encodeURIComponent(code)}/poses?${asked}`)).data.movement;
}
