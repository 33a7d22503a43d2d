/** One's own account, and the people of the practice. All throw RequestFailed. */
import { request } from './request';
import type { MadePasskey, PasskeyAnswer } from './passkeys';
import type { Me, Schemas } from './types';

export type Account = Schemas['AccountOut'];
export type Passkey = Schemas['PasskeyOut'];
export type OpenSession = Schemas['OpenSession'];
export type Colleague = Schemas['Colleague'];
export type Waiting = Schemas['WaitingColleague'];
export type ColleagueLink = Schemas['ColleagueLink'];
export type People = Schemas['People'];
export type Role = Schemas['Role'];
export type Options = Schemas['PasskeyOptions'];
export type Welcome = Schemas['Welcome'];
export type PracticeWords = Schemas['PracticeWords'];
/** What is shown beside the password. */
export interface Shown { code?: string; recovery_code?: string; passkey?: PasskeyAnswer }
export type Way = 'code' | 'passkey' | 'recovery_code';

const post = async <T>(path: string, body?: unknown): Promise<T> => (await request<T>('POST', path, { body })).data;
const drop = async (path: string): Promise<true> => (await request<void>('DELETE', path), true);

export const askPassword = (email: string, password: string, shown: Shown) => post<Me>('/sign-in', { email, password, ...shown });
export const askPasskey = (passkey: PasskeyAnswer) => post<Me>('/sign-in/passkeys', { passkey });
/** With address and password for one's own passkeys, without for any. */
export const signInChallenge = (who?: { email: string; password: string }) => post<Options>('/sign-in/challenges', who);

export const confirmSession = (shown: Shown & { password?: string }) => post<void>('/account/confirmations', shown);
export const confirmChallenge = () => post<Options>('/account/confirmation-challenges');
export const changePassword = async (current: string, fresh: string): Promise<true> => (await post<void>('/account/password', { current, new: fresh }), true);
export const beginTotp = () => post<Schemas['TotpBegun']>('/account/totp');
export const activateTotp = async (code: string) => (await post<Schemas['RecoveryCodes']>('/account/totp/activations', { code })).recovery_codes;
export const removeTotp = () => drop('/account/totp');
export const renewRecoveryCodes = async () => (await post<Schemas['RecoveryCodes']>('/account/recovery-codes')).recovery_codes;
export const beginPasskey = () => post<Options>('/account/passkey-challenges');
export const addPasskey = async (name: string, made: MadePasskey) => (await post<Schemas['RecoveryCodes']>('/account/passkeys', { name, ...made })).recovery_codes;
export const removePasskey = (id: string) => drop(`/account/passkeys/${id}`);
export const endSession = (id: string) => drop(`/account/sessions/${id}`);
export const endOtherSessions = () => drop('/account/sessions');
export const endEverySession = () => drop('/account/sessions?here=true');

export const inviteColleague = (body: Schemas['ColleagueBody']) => post<ColleagueLink>('/practice/invitations', body);
export const withdrawColleague = (id: string) => drop(`/practice/invitations/${id}`);
export const changeColleague = async (id: string, change: { role?: Role; disabled?: boolean }) =>
  (await request<Colleague>('PATCH', `/practice/people/${id}`, { body: change })).data;
export const resetSecondFactor = (id: string) => post<Colleague>(`/practice/people/${id}/second-factor-resets`);
export const welcomeBack = (id: string) => post<ColleagueLink>(`/practice/people/${id}/welcome-links`);
export const requireSecondFactor = async (requires_second_factor: boolean) =>
  (await request<Schemas['PracticeSecurity']>('PATCH', '/practice/security', { body: { requires_second_factor } })).data;
export const changePracticeWords = async (body: PracticeWords) => (await request<PracticeWords>('PUT', '/practice/words', { body })).data;
export const readWelcome = (code: string) => post<Welcome>('/practice/welcomes', { code });
export const joinPractice = (body: { code: string; display_name: string; password: string }) => post<Me>('/practice/people', body);
