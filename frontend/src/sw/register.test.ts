import { beforeEach, expect, it, vi } from 'vitest';

const listeners = new Map<string, () => void>();
const listen = (name: string, run: () => void) => listeners.set(name, run);
const waiting = { postMessage: vi.fn() };
const registration = { waiting, installing: null, addEventListener: listen, update: vi.fn(async () => undefined) };
const reload = vi.fn();

beforeEach(() => {
  vi.resetModules();
  vi.clearAllMocks();
  vi.stubEnv('DEV', false);
  vi.stubGlobal('location', { reload });
  vi.stubGlobal('document', { visibilityState: 'visible', addEventListener: listen });
  vi.stubGlobal('navigator', { serviceWorker: { controller: {}, addEventListener: listen, register: vi.fn(async () => registration) } });
});

it('a new version is offered, and taken only when a person says yes', async () => {
  const { registerWorker, updateWaiting, useNewVersion } = await import('./register');
  await registerWorker();
  expect([updateWaiting.value, waiting.postMessage.mock.calls.length]).toEqual([true, 0]);
  useNewVersion();
  expect(waiting.postMessage).toHaveBeenCalledWith('use-new-version');
  listeners.get('controllerchange')!();
  expect(reload).toHaveBeenCalledTimes(1);
});

it('a page beside it, whose person said nothing, is not loaded again under their hands', async () => {
  const { registerWorker } = await import('./register');
  await registerWorker();
  listeners.get('controllerchange')!();
  expect(reload).not.toHaveBeenCalled();
});

it('a page that is seen again asks for a new version', async () => {
  const { registerWorker } = await import('./register');
  await registerWorker();
  listeners.get('visibilitychange')!();
  expect(registration.update).toHaveBeenCalledTimes(1);
});
