import { afterEach, describe, expect, it, vi } from 'vitest';
import { failureFrom, request, RequestFailed, whenSignedOut } from './request';

const problem = (status: number, body: object, headers: Record<string, string> = {}) => new Response(JSON.stringify(body), { status, headers });
const answers = (response: () => Response | Promise<Response>) => vi.stubGlobal('fetch', vi.fn(async () => response()));
const failure = async (asked: Promise<unknown>) => failureFrom(await asked.catch((error: unknown) => error));

afterEach(() => {
  vi.unstubAllGlobals();
  whenSignedOut(() => undefined);
});

describe('request', () => {
  it('gives data and tag', async () => {
    answers(() => new Response('{"a":1}', { headers: { ETag: '"v3"' } }));
    expect(await request('GET', '/x')).toEqual({ data: { a: 1 }, etag: '"v3"' });
  });
  it('sends body and condition', async () => {
    answers(() => new Response('{}'));
    await request('PATCH', '/x', { body: { b: 2 }, ifMatch: '"v3"' });
    const [url, init] = vi.mocked(fetch).mock.calls[0] as [string, RequestInit];
    expect([url, init.method, init.body, (init.headers as Record<string, string>)['If-Match']]).toEqual(['/api/v1/x', 'PATCH', '{"b":2}', '"v3"']);
  });
  it('tells a lost line from an answer', async () => {
    answers(() => Promise.reject(new TypeError('Failed to fetch')));
    expect(await failure(request('GET', '/x'))).toEqual({ kind: 'network' });
  });
  it('takes half an answer for a lost line', async () => {
    answers(() => new Response('{"a":'));
    expect(await failure(request('GET', '/x'))).toEqual({ kind: 'network' });
  });
  it('tells the page when the session ended, but not for a wrong password', async () => {
    const told = vi.fn();
    whenSignedOut(told);
    answers(() => problem(401, { code: 'wrong-sign-in', title: 'Not signed in' }));
    expect((await failure(request('POST', '/sign-in', { body: {} }))).kind).toBe('problem');
    expect(told).not.toHaveBeenCalled();
    answers(() => problem(401, { code: 'not-signed-in', title: 'Not signed in' }));
    expect(await failure(request('GET', '/caseload'))).toEqual({ kind: 'signed_out' });
    expect(told).toHaveBeenCalledOnce();
  });
  it('keeps the code, the status and the seconds to wait', async () => {
    answers(() => problem(429, { code: 'too-many', title: 'Too many tries' }, { 'Retry-After': '12.2' }));
    expect(await failure(request('GET', '/x'))).toMatchObject({ problem: { code: 'too-many', status: 429 }, retryAfterS: 13 });
  });
  it('takes an answer that is no problem document as one', async () => {
    answers(() => new Response('<h1>Bad gateway</h1>', { status: 502, statusText: 'Bad Gateway' }));
    expect(await failure(request('GET', '/x'))).toMatchObject({ problem: { status: 502, title: 'Bad Gateway' } });
  });
  it('lets faults of the program through', () => {
    expect(() => failureFrom(new TypeError('x'))).toThrow(TypeError);
    expect(failureFrom(new RequestFailed({ kind: 'network' }))).toEqual({ kind: 'network' });
  });
});
