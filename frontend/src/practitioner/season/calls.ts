/** Questions of the season's page; the server stores nothing for them. All throw RequestFailed. */
import type { ProgramContent } from '../../shared/program';
import { request } from '../api/request';
import type { LayOut, Pause, Plan, Proposal, Resumption, Start } from './types';

const at = (client: string) => `/clients/${encodeURIComponent(client)}`;
const post = async <T>(path: string, body: unknown): Promise<T> => (await request<T>('POST', path, { body })).data;

export const readStart = async (client: string): Promise<Start> => (await request<Start>('GET', `${at(client)}/season-plan`)).data;
export const plan = (client: string, season: Plan) => post<Proposal>(`${at(client)}/season-plans`, { season });
export const resume = (client: string, season: Plan, pause: { reason: Pause; since: string; resume_on: string }) =>
  post<Resumption>(`${at(client)}/season-plans/resumptions`, { season, ...pause });
export const layOut = (client: string, body: LayOut) => post<ProgramContent>(`${at(client)}/season-plans/contents`, body);
