/** One way to ask the server. Every failure has a kind, so that each page can say in words what happened and what was kept. */

/** RFC 9457 problem details, as the server answers them. */
export interface Problem {
  title: string;
  status: number;
  code: string;
  detail?: string;
  errors?: readonly { pointer: string; code: string; detail: string }[];
  /** How a second factor can be shown, where one is needed. */
  ways?: readonly ('code' | 'passkey' | 'recovery_code')[];
}

export type Failure =
  | { kind: 'network' }
  | { kind: 'signed_out' }
  /** `retryAfterS`: whole seconds until another try is worth it, where the server says so. */
  | { kind: 'problem'; problem: Problem; retryAfterS: number | null };

/** Whether the server's answer was this problem. */
export const isProblem = (failure: Failure | null | undefined, code: string): boolean => failure?.kind === 'problem' && failure.problem.code === code;

export class RequestFailed extends Error {
  constructor(readonly failure: Failure) {
    super(failure.kind === 'problem' ? failure.problem.title : failure.kind);
  }
}

export interface Reply<T> {
  data: T;
  etag: string | null;
}
interface Options {
  body?: unknown;
  /** Sent as it is, instead of a body of JSON. */
  file?: Blob;
  ifMatch?: string | null | undefined;
  /** Only where there is none of it yet: else it is answered 412. */
  ifNoneYet?: boolean;
}

/** Longer than any answer takes; after it the person is told instead of left waiting. House value, milliseconds. */
const PATIENCE_MS = 20_000;
/** A large file over a slow line, and its reading. House value, milliseconds. */
const PATIENCE_FILE_MS = 300_000;
const BASE = '/api/v1';

let onSignedOut = (): void => {};
/** Who is told that the session ended. */
export function whenSignedOut(tell: () => void): void {
  onSignedOut = tell;
}

async function problemOf(response: Response): Promise<Problem> {
  const plain: Problem = { title: response.statusText || String(response.status), status: response.status, code: 'http' };
  try {
    return { ...plain, ...((await response.json()) as Partial<Problem>) };
  } catch {
    return plain; // something between here and the server answered in its own words
  }
}

async function failureOf(response: Response): Promise<Failure> {
  const problem = await problemOf(response);
  if (response.status === 401 && problem.code === 'not-signed-in') return { kind: 'signed_out' };
  const seconds = Number(response.headers.get('Retry-After'));
  return { kind: 'problem', problem, retryAfterS: seconds > 0 ? Math.ceil(seconds) : null };
}

function optionsOf(method: string, { body, file, ifMatch, ifNoneYet }: Options): RequestInit {
  const headers: Record<string, string> = { Accept: 'application/json' };
  if (body !== undefined) headers['Content-Type'] = 'application/json';
  if (ifMatch) headers['If-Match'] = ifMatch;
  if (ifNoneYet) headers['If-None-Match'] = '*';
  if (file) return { method, headers: { ...headers, 'Content-Type': 'application/gpx+xml' }, signal: AbortSignal.timeout(PATIENCE_FILE_MS), body: file };
  return { method, headers, signal: AbortSignal.timeout(PATIENCE_MS), ...(body !== undefined && { body: JSON.stringify(body) }) };
}

async function ask(method: string, path: string, options: Options): Promise<Response> {
  try {
    return await fetch(BASE + path, optionsOf(method, options));
  } catch {
    throw new RequestFailed({ kind: 'network' });
  }
}

async function read<T>(response: Response): Promise<T> {
  if (response.status === 204) return undefined as T;
  try {
    return (await response.json()) as T;
  } catch {
    throw new RequestFailed({ kind: 'network' }); // the line broke in the middle of the answer
  }
}

/**
 * Ask for `path` under the API's base.
 * @throws RequestFailed always, whatever went wrong.
 */
export async function request<T>(method: 'GET' | 'POST' | 'PATCH' | 'PUT' | 'DELETE', path: string, options: Options = {}): Promise<Reply<T>> {
  const response = await answered(method, path, options);
  return { data: await read<T>(response), etag: response.headers.get('ETag') };
}

/**
 * Ask for a file; it bears the name that the server gives it.
 * @throws RequestFailed always, whatever went wrong.
 */
export async function requestFile(method: 'GET' | 'POST', path: string, body?: unknown): Promise<File> {
  const response = await answered(method, path, { body });
  const name = /filename="([^"]+)"/.exec(response.headers.get('Content-Disposition') ?? '')?.[1] ?? 'steadfoot.pdf';
  try {
    const blob = await response.blob();
    return new File([blob], name, { type: blob.type });
  } catch {
    throw new RequestFailed({ kind: 'network' }); // the line broke in the middle of the answer
  }
}

async function answered(method: string, path: string, options: Options): Promise<Response> {
  const response = await ask(method, path, options);
  if (response.ok) return response;
  const failure = await failureOf(response);
  if (failure.kind === 'signed_out') onSignedOut();
  throw new RequestFailed(failure);
}

/** What went wrong, of anything thrown. Errors that are no failed request are faults of this program and go on. */
export function failureFrom(error: unknown): Failure {
  if (error instanceof RequestFailed) return error.failure;
  throw error;
}
