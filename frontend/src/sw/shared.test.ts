import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { loadShared, readWalk, sharedWaits, takeShared } from '../client/walkfile/shared';
import type { WalkRead } from '../client/walkfile/readGpx';
import { FILE_MAX_BYTES, firstShared, forgetShared, putBy, SHARE_PATH } from './shared';

const GPX = '<gpx version="1.1"><trk><trkseg><trkpt lat="46" lon="13"/><trkpt lat="46.01" lon="13"/></trkseg></trk></gpx>';
const HUGE = new File(['.'.repeat(FILE_MAX_BYTES + 1)], 'huge.gpx');
const manifest = JSON.parse(readFileSync(new URL('../../public/manifest.webmanifest', import.meta.url), 'utf8')) as { share_target: { action: string; params: { files: { name: string }[] } } };

/** As much of a browser's cache storage as is used here: a cache is there once it is opened, and keys come in their order. */
function storage() {
  const all = new Map<string, Map<string, Response>>();
  const open = async (name: string) => {
    const held = all.get(name) ?? all.set(name, new Map()).get(name)!;
    return {
      put: async (key: string, reply: Response) => void held.set(key, reply),
      keys: async () => [...held.keys()].map((url) => ({ url })),
      match: async ({ url }: { url: string }) => held.get(url)?.clone(),
      delete: async (url: string) => held.delete(url),
    };
  };
  return { open, delete: async (name: string) => all.delete(name) };
}

/** A share as the manifest asks for it. */
function share(...files: (File | string)[]): Promise<void> {
  const form = new FormData();
  for (const file of files) form.append(manifest.share_target.params.files[0]!.name, file as string);
  return putBy(form);
}

const walk = (text: string = GPX) => new File([text], 'walk.gpx', { type: 'application/gpx+xml' });
const taken: WalkRead[] = [];
const take = () => takeShared(async (read) => void taken.push(read));

beforeEach(() => {
  taken.length = 0;
  vi.stubGlobal('caches', storage());
});
afterEach(() => vi.unstubAllGlobals());

describe('a shared walk', () => {
  it('is posted where the worker listens', () => expect(manifest.share_target.action).toBe(SHARE_PATH));

  it('waits until it is read, and is read once', async () => {
    await share(walk());
    await loadShared();
    expect(sharedWaits.value).toBe(true);
    expect(await take()).toBe('read');
    expect(taken[0]?.distance_km).toBeCloseTo(1.112, 3);
    expect([sharedWaits.value, await take(), taken.length]).toEqual([false, null, 1]);
  });

  it('stays while another one is read: several come one after the other, in their order', async () => {
    await share(walk(), walk(GPX.replace('46.01', '46.02')));
    await share(walk(GPX.replace('46.01', '46.03')));
    await take();
    expect(sharedWaits.value).toBe(true);
    await take();
    await take();
    expect(taken.map((one) => Math.round(one.distance_km * 10) / 10)).toEqual([1.1, 2.2, 3.3]);
    expect(sharedWaits.value).toBe(false);
  });

  it('that is too large, no file or no walk says so as a chosen file does, and does not come again', async () => {
    await share(HUGE, walk('<html/>'), walk('<gpx></gpx>'));
    await share();
    await share('a link');
    expect((await firstShared())?.file.size).toBe(0); // what is too large takes no room
    expect([await take(), await take(), await take(), await take(), await take(), await take()]).toEqual(['too_large', 'not_gpx', 'no_way', 'not_gpx', 'not_gpx', null]);
    expect([await readWalk(HUGE), await readWalk(walk('<html/>')), await readWalk(walk('<gpx></gpx>'))]).toEqual(['too_large', 'not_gpx', 'no_way']);
    expect(taken).toEqual([]);
  });

  it('is not let go of before the form has kept it', async () => {
    await share(walk());
    await expect(takeShared(() => Promise.reject(new Error('closed')))).rejects.toThrow('closed');
    expect(await take()).toBe('read');
  });

  it('goes with everything else', async () => {
    await share(walk());
    await forgetShared();
    expect(await take()).toBeNull();
  });

  it('cannot be kept where storage is refused, and then none waits', async () => {
    vi.stubGlobal('caches', { open: () => Promise.reject(new DOMException('refused', 'SecurityError')) });
    await expect(share(walk())).rejects.toThrow('refused');
    await loadShared();
    expect([sharedWaits.value, await take()]).toEqual([false, null]);
  });
});

describe('the reader', () => {
  it('that cannot be loaded does not cost the shared walk', async () => {
    await share(walk());
    vi.resetModules();
    vi.doMock('../client/walkfile/readGpx', () => Promise.reject(new Error('offline')));
    const fresh = await import('../client/walkfile/shared');
    expect(await fresh.takeShared(() => Promise.resolve())).toBe('not_loaded');
    vi.doUnmock('../client/walkfile/readGpx');
    expect(await firstShared()).not.toBeNull();
  });
});
