/** Questions and writes of the program editor. All throw RequestFailed. */
import type { ProgramContent } from '../../shared/program';
import { failureFrom, request, type Reply } from '../api/request';
import type { Client, Items } from '../api/types';
import type { Entry } from '../exercises/entry';
import type { Checks, Draft, DraftBody, LayOut, Template, TemplateBody, Version } from './types';

const programs = (client: string) => `/clients/${encodeURIComponent(client)}/programs`;

/** The answer, or null where the server says that there is none. */
async function orNone<T>(asked: Promise<Reply<T>>): Promise<Reply<T> | null> {
  try {
    return await asked;
  } catch (error) {
    const failure = failureFrom(error);
    if (failure.kind === 'problem' && failure.problem.status === 404) return null;
    throw error;
  }
}

export const readClient = (client: string) => request<Client>('GET', `/clients/${encodeURIComponent(client)}`);
export const readLibrary = () => request<Items<Entry>>('GET', '/exercises');
export const readTemplates = () => request<Items<Template>>('GET', '/templates');
export const readCurrent = (client: string) => orNone(request<Version>('GET', `${programs(client)}/current`));
export const readVersion = (client: string, number: number) => request<Version>('GET', `${programs(client)}/${number}`);
export const readDraft = (client: string) => orNone(request<Draft>('GET', `${programs(client)}/draft`));

/** With the tag of the draft last seen, or none seen, a colleague's newer one is answered 412 and not overwritten. */
export const saveDraft = (client: string, body: DraftBody, ifMatch: string | null) =>
  request<Draft>('PUT', `${programs(client)}/draft`, { body, ...(ifMatch ? { ifMatch } : { ifNoneYet: true }) });
export const dropDraft = (client: string) => request<void>('DELETE', `${programs(client)}/draft`);

export const check = async (client: string, content: ProgramContent): Promise<Checks> =>
  (await request<Checks>('POST', `${programs(client)}/checks`, { body: { content } })).data;
export const publish = (client: string, content: ProgramContent, note: string, ifMatch: string) =>
  request<Version>('POST', programs(client), { body: { content, note }, ifMatch });

export const layOut = async (client: string, body: LayOut): Promise<ProgramContent> =>
  (await request<ProgramContent>('POST', `${programs(client)}/drafts/from-template`, { body })).data;
export const changeTemplate = (id: string, body: Partial<Pick<TemplateBody, 'name' | 'about'>>) => request<Template>('PATCH', `/templates/${encodeURIComponent(id)}`, { body });
export const deleteTemplate = (id: string) => request<void>('DELETE', `/templates/${encodeURIComponent(id)}`);
export const saveTemplate = async (body: TemplateBody): Promise<Template> => (await request<Template>('POST', '/templates', { body })).data;
