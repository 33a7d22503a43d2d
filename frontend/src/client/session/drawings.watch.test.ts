import { signal } from '@preact/signals';
import { expect, it, vi } from 'vitest';

const saved = signal(3);
const received = signal(3);
vi.mock('../../outbox', () => ({
  savedCount: saved, receivedCount: received, olderPrograms: signal([]), program: signal({ id: 'v1', content: { sessions: [] }, exercises: [] }),
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
  saved.value = 5;
  asked.length = 0;
  occasions.get('online')!();
  await settled();
  expect(asked).toEqual([]);
  received.value = 5;
  await settled();
  expect(asked).toEqual(['/api/v1/drawings']);
});
