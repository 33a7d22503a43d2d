import { signal } from '@preact/signals';
import { expect, it, vi } from 'vitest';

const waitingSince = signal<string | null>(null);
vi.mock('../../outbox', () => ({
  waitingSince, olderPrograms: signal([]), program: signal({ id: 'v1', content: { sessions: [] }, exercises: [] }),
}));

it('drawings are asked for after the check-ins that waited for the network have gone', async () => {
  const asked: string[] = [];
  const occasions = new Map<string, () => void>();
  vi.stubGlobal('addEventListener', (name: string, run: () => void) => occasions.set(name, run));
  vi.stubGlobal('fetch', (url: string) => (asked.push(url), Promise.reject(new TypeError('no network'))));
  const cache = { matchAll: async () => [], keys: async () => [] };
  vi.stubGlobal('caches', { open: async () => cache });
  const settled = () => new Promise((done) => setTimeout(done, 5));

  const { watchDrawings } = await import('./drawings');
  watchDrawings();
  await settled();
  waitingSince.value = '2026-11-25T10:00:00.000+00:00';
  asked.length = 0;
  occasions.get('online')!();
  await settled();
  expect(asked).toEqual([]);
  waitingSince.value = null;
  await settled();
  expect(asked).toEqual(['/api/v1/drawings']);
});
