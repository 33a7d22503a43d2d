import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { hearAbout, refreshAbout, TOGETHER_MS, watch } from './resource';
import { request } from './request';

vi.mock('./request', () => ({ request: vi.fn(async () => ({ data: {}, etag: null })), failureFrom: (error: unknown) => error }));
const asked = (path: string) => vi.mocked(request).mock.calls.filter(([, which]) => which === path).length;
let left: (() => void)[] = [];
const leave = () => left.splice(0).forEach((end) => end());
async function open(name: string): Promise<void> {
  left = [watch(`/caseload-${name}`), watch(`/clients/emil-${name}`, 'emil')];
  await vi.advanceTimersByTimeAsync(0);
}

beforeEach(() => vi.useFakeTimers());
afterEach(() => {
  leave();
  vi.useRealTimers();
});

it('asks about the first news at once, and about what follows together', async () => {
  await open('a');
  hearAbout('emil');
  await vi.advanceTimersByTimeAsync(0);
  expect(asked('/caseload-a')).toBe(2);
  for (let n = 0; n < 20; n += 1) {
    hearAbout('nora');
    await vi.advanceTimersByTimeAsync(100);
  }
  expect(asked('/caseload-a')).toBe(2);
  await vi.advanceTimersByTimeAsync(TOGETHER_MS);
  expect(asked('/caseload-a')).toBe(3);
  await vi.advanceTimersByTimeAsync(5 * TOGETHER_MS);
  expect(asked('/caseload-a')).toBe(3);
});

it('asks about one person at each news of them, and at none of others', async () => {
  await open('b');
  for (let n = 0; n < 3; n += 1) {
    hearAbout('emil');
    hearAbout('nora');
    await vi.advanceTimersByTimeAsync(10);
  }
  expect(asked('/clients/emil-b')).toBe(4);
});

it('never lets what was done here wait', async () => {
  await open('c');
  hearAbout('nora');
  await vi.advanceTimersByTimeAsync(10);
  await refreshAbout('emil');
  expect(asked('/caseload-c')).toBe(3);
});

it('asks nothing for a page that was left meanwhile', async () => {
  await open('d');
  hearAbout('emil');
  hearAbout('emil');
  leave();
  await vi.advanceTimersByTimeAsync(2 * TOGETHER_MS);
  expect(asked('/caseload-d')).toBe(2);
});
