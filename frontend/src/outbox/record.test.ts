import { expect, it } from 'vitest';
import { callSync } from './http';
import { callRecord } from './record';

const answer = (body: BodyInit, init: ResponseInit) => async () => new Response(body, init);

it('takes the practice’s zip and nothing else for one', async () => {
  const zip = answer('PK', { headers: { 'Content-Type': 'application/zip' } });
  expect(await (await callRecord(zip, 'key', 'de'))?.text()).toBe('PK');
  expect(await callRecord(answer('<html>', { headers: { 'Content-Type': 'text/html' } }), 'key', 'de')).toBeNull();
  expect(await callRecord(answer('', { status: 429 }), 'key', 'de')).toBeNull();
  expect(await callRecord(() => Promise.reject(new TypeError('no network')), 'key', 'de')).toBeNull();
});

it('knows a record that was erased from a phone that was unpaired, and both from a network’s own page', async () => {
  const refused = (code: string) => answer(JSON.stringify({ code }), { status: 401 });
  const kind = async (fetch: () => Promise<Response>) => (await callSync(fetch, 'key', 0, [], 0)).kind;
  expect(await kind(refused('record-erased'))).toBe('erased');
  expect(await kind(refused('device-revoked'))).toBe('revoked');
  expect(await kind(answer('Please sign in to this network', { status: 401 }))).toBe('later');
});
