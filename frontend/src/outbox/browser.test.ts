import { readdirSync, readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { browserSurroundings, watchOccasions } from './browser';
import type { Sender } from './sender';
import { DEVICE, freshStorage } from './testing/phone';
import { FakePractice } from './testing/server';

afterEach(() => vi.unstubAllGlobals());

describe('occasions to send', () => {
  let heard: Map<string, () => void>;
  const page = { visibilityState: 'visible', addEventListener: (name: string, run: () => void) => heard.set(name, run) };
  beforeEach(() => {
    heard = new Map();
    vi.stubGlobal('addEventListener', page.addEventListener);
    vi.stubGlobal('document', page);
  });
  const watched = () => {
    const sender = { kick: vi.fn(), setVisible: vi.fn() };
    const reload = vi.fn(() => Promise.reject(new Error('no storage')));
    watchOccasions(sender as unknown as Sender, reload);
    return { sender, reload };
  };

  it('are a network that comes back and a page that is seen again, which reads anew what another page wrote', () => {
    const { sender, reload } = watched();
    heard.get('online')!();
    expect(sender.kick).toHaveBeenCalledTimes(1);
    heard.get('visibilitychange')!();
    expect([sender.setVisible.mock.lastCall, reload.mock.calls.length]).toEqual([[true], 1]);
    page.visibilityState = 'hidden';
    heard.get('visibilitychange')!();
    expect([sender.setVisible.mock.lastCall, reload.mock.calls.length]).toEqual([[false], 1]);
  });

  it('are not taken from what the browser believes of the network: it may lie both ways', async () => {
    freshStorage();
    vi.resetModules();
    vi.stubGlobal('navigator', { onLine: false });
    const practice = new FakePractice();
    vi.stubGlobal('fetch', practice.fetch);
    const phone = await import('./index');
    await phone.acceptPairing(DEVICE);
    await phone.record('note_written', { text: 'sent all the same' });
    await vi.waitFor(() => expect(practice.stored.size).toBe(1));
  });

  it('no line of the phone app asks whether there is a network', () => {
    const root = new URL('..', import.meta.url);
    const files = ['client', 'outbox', 'sw', 'shared'].flatMap((folder) =>
      readdirSync(new URL(folder, root), { recursive: true, encoding: 'utf8' }).map((file) => `${folder}/${file}`),
    );
    const sources = files.filter((file) => /\.tsx?$/.test(file) && !/\.test\./.test(file));
    expect(sources.length).toBeGreaterThan(50);
    expect(sources.filter((file) => /\bonLine\b/.test(readFileSync(new URL(file, root), 'utf8')))).toEqual([]);
  });
});

describe('one page at a time', () => {
  it('sends where the browser has no locks: the practice knows each entry by its id', async () => {
    vi.stubGlobal('navigator', {});
    const flush = vi.fn(async () => undefined);
    await browserSurroundings().alone(flush);
    expect(flush).toHaveBeenCalledTimes(1);
  });

  it('asks for the lock for one flush, and leaves it to another page that has it', async () => {
    const request = vi.fn(async (_name: string, _how: object, run: (lock: object | null) => unknown) => run(null));
    vi.stubGlobal('navigator', { locks: { request } });
    const flush = vi.fn(async () => undefined);
    await browserSurroundings().alone(flush);
    expect([flush.mock.calls.length, request.mock.calls[0]!.slice(0, 2)]).toEqual([0, ['steadfoot.flush', { ifAvailable: true }]]);
  });

  it('does not wait for ever for a page that was frozen while it had the lock', async () => {
    vi.useFakeTimers();
    let isFree = false;
    const request = vi.fn(async (_name: string, _how: object, run: (lock: object | null) => unknown) => run(isFree ? {} : null));
    vi.stubGlobal('navigator', { locks: { request } });
    const [flush, { alone }] = [vi.fn(async () => undefined), browserSurroundings()];
    for (let seconds = 0; seconds <= 20; seconds += 10) {
      await alone(flush);
      vi.advanceTimersByTime(10_000);
    }
    expect(flush).not.toHaveBeenCalled();
    await alone(flush);
    expect(flush).toHaveBeenCalledTimes(1);
    vi.useRealTimers();
    isFree = true;
    await alone(flush);
    expect(flush).toHaveBeenCalledTimes(2);
  });
});
