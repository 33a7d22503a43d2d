/** Every call of these pages. All throw RequestFailed. */
import type { Language } from '../../shared/words/mechanism';
import { confirmed } from '../api/confirm';
import { request, requestFile } from '../api/request';
import type { Schemas } from '../api/types';

export type AuditPage = Schemas['AuditPage'];
export type AuditRow = Schemas['AuditRow'];
export type ChainState = Schemas['ChainState'];
export type ErasureState = Schemas['ErasureState'];
export type Retention = Schemas['RetentionOut'];
export type When = Schemas['When'];

export const exportRecord = (client: string, language: Language) =>
  confirmed(() => requestFile('GET', `/clients/${encodeURIComponent(client)}/record.zip?language=${language}`));
export const exportLog = (kind: 'csv' | 'jsonl', choice: string) =>
  confirmed(() => requestFile('GET', `/audit/rows.${kind}${choice && `?${choice}`}`));
export const eraseClient = async (client: string, name: string, when: When) =>
  (await confirmed(() => request<Schemas['ErasureDone']>('POST', `/clients/${encodeURIComponent(client)}/erasure`, { body: { name, when } }))).data;
export const keepClient = (client: string) => request<void>('DELETE', `/clients/${encodeURIComponent(client)}/erasure`);
export const setRetention = async (years: number | null) => (await request<Retention>('PUT', '/retention', { body: { years } })).data;
