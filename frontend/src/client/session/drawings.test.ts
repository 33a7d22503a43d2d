import { describe, expect, it } from 'vitest';
import { drawingUrl } from '../../shared/drawing';
import { stillOf } from '../../sw/drawings';
import { content } from '../testing/sample';
import { fetchList, isFree, keepDrawings, programDrawings } from './drawings';
import type { Exercise } from './library';

const rung = (variant: string) => ({
  variant, name: variant, short: '', sides: 'each' as const, kit: [], how: [], dose: {}, load: 'none' as const,
});
const stepDown: Exercise = {
  code: 'step-down', name: 'Step-down', why: '', sides: 'each', cues: [], faults: [], cautions: [],
  ladder: ['rail', 'step-10', 'step-15', 'step-20', 'step-20-pack'].map(rung),
};
const moving = (variant: string) => drawingUrl('step-down', variant, 'moving');

/** A cache of the browser's shape. */
class Kept {
  readonly held = new Map<string, Response>();
  constructor(versions: Record<string, string> = {}) {
    for (const [url, version] of Object.entries(versions)) {
      this.held.set(url, new Response('old', { headers: { 'Drawing-Address': url, 'Drawing-Version': version, 'Content-Length': '3' } }));
    }
  }
  keys = async () => [...this.held.keys()].map((url) => ({ url: `https://practice.example${url}` }));
  matchAll = async () => [...this.held.values()];
  delete = async (url: string) => this.held.delete(url.replace('https://practice.example', ''));
  put = async (url: string, answer: Response) => void this.held.set(url, answer);
  text = (url: string) => this.held.get(url)!.clone().text();
  keep = (first: string[], listed: Record<string, string> | null, ask: typeof fetch, mayGoOn = () => true) =>
    keepDrawings(first, listed && new Map(Object.entries(listed).map(([url, version]) => [url, { version, ready: url !== '/slow' }])), this as unknown as Cache, ask, mayGoOn);
}
const picture = () => new Response('<svg/>', { headers: { 'Content-Type': 'image/svg+xml' } });
const signIn = () => new Response('<html>', { headers: { 'Content-Type': 'text/html' } });
const missing = () => new Response('{}', { status: 404, headers: { 'Content-Type': 'application/problem+json' } });

function network(answer: () => Response) {
  const asked: string[] = [];
  const ask = (async (url: string) => { asked.push(url); return answer(); }) as unknown as typeof fetch;
  return { asked, ask };
}

describe('which drawings a program needs', () => {
  it('those of what is prescribed and of the rungs beside it, whenever it was published', () => {
    expect(programDrawings([{ content, exercises: [stepDown] }])).toEqual(['step-15', 'step-10', 'step-20'].map(moving));
  });
  it('each once, whatever number of programs uses it', () => {
    const one = { content, exercises: [stepDown] };
    expect(programDrawings([one, one])).toHaveLength(3);
  });
});

describe('keeping them', () => {
  it('the program comes first, then the library; what is there in its version is left, what is in neither goes', async () => {
    const kept = new Kept({ '/a': '1', '/gone': '1' });
    const { asked, ask } = network(picture);
    expect(await kept.keep(['/c'], { '/a': '1', '/b': '1', '/c': '1' }, ask)).toBe(true);
    expect(asked).toEqual(['/c', '/b']);
    expect([...kept.held.keys()].sort()).toEqual(['/a', '/b', '/c']);
  });
  it('brings again what was drawn anew, and only that', async () => {
    const kept = new Kept({ '/a': '1', '/b': '1' });
    const { asked, ask } = network(picture);
    await kept.keep(['/a'], { '/a': '2', '/b': '1' }, ask);
    expect(asked).toEqual(['/a']);
    expect(await kept.text('/a')).toBe('<svg/>');
    await kept.keep(['/a'], { '/a': '2', '/b': '1' }, ask);
    expect(asked).toHaveLength(1);
  });
  it('while the library must wait the program does not; later it goes on where it stopped', async () => {
    const kept = new Kept();
    const { asked, ask } = network(picture);
    const listed = { '/a': '1', '/b': '1', '/c': '1' };
    expect(await kept.keep(['/c'], listed, ask, () => asked.length < 2)).toBe(false);
    expect(asked).toEqual(['/c', '/a']);
    expect(await kept.keep(['/c'], listed, ask)).toBe(true);
    expect(asked).toEqual(['/c', '/a', '/b']);
  });
  it('without the list of the library it brings what the program misses and takes nothing away', async () => {
    const kept = new Kept({ '/a': '1', '/b': '1' });
    const { asked, ask } = network(picture);
    expect(await kept.keep(['/a', '/c'], null, ask)).toBe(true);
    expect(asked).toEqual(['/c']);
    expect([...kept.held.keys()]).toEqual(['/a', '/b', '/c']);
  });
  it('of what the practice has yet to compute it asks only for what the program needs', async () => {
    const { asked, ask } = network(picture);
    await new Kept().keep([], { '/slow': '1', '/b': '1' }, ask);
    expect(asked).toEqual(['/b']);
    await new Kept().keep(['/slow'], { '/slow': '1' }, ask);
    expect(asked).toEqual(['/b', '/slow']);
  });
  it('does not ask for what is not drawn', async () => {
    const { asked, ask } = network(picture);
    await new Kept().keep(['/undrawn'], {}, ask);
    expect(asked).toEqual([]);
  });
  it.each([['a sign-in page', signIn], ['not found', missing]])('never keeps %s, and loses nothing to it', async (_, answer) => {
    const kept = new Kept({ '/a': '1' });
    await kept.keep(['/a', '/b'], { '/a': '2', '/b': '1' }, network(answer).ask);
    expect([...kept.held.keys()]).toEqual(['/a']);
    expect(await kept.text('/a')).toBe('old');
  });
});

describe('the list of the library', () => {
  it('tells addresses, versions and what is ready', async () => {
    const items = [{ exercise: 'step-down', variant: 'rail', version: 'f00', ready: true }];
    expect(await fetchList(network(() => Response.json({ items })).ask)).toEqual(new Map([[moving('rail'), { version: 'f00', ready: true }]]));
  });
  it.each([['a sign-in page', signIn], ['not found', missing]])('is not %s', async (_, answer) => {
    expect(await fetchList(network(answer).ask)).toBeNull();
  });
});

describe('whether the network charges by the amount', () => {
  it.each([{ saveData: true, type: 'wifi' }, { type: 'cellular' }, { effectiveType: 'slow-2g' }])('it may: %o', (link) => expect(isFree(link)).toBe(false));
  it.each([undefined, {}, { saveData: false, type: 'wifi', effectiveType: '4g' }])('not so: %o', (link) => expect(isFree(link)).toBe(true));
});

describe('the still drawing in a moving one', () => {
  const body = '<g style="animation-name:m0" transform="translate(1 2)"><path d="M0 0"/></g>';
  it('is its poster: the colors stay, the movement goes', () => {
    const sheet = '.s{fill:#fff}g{animation:3s linear infinite}@media(x){g{animation:none!important}}@keyframes m0{0%{transform:none}}';
    expect(stillOf(`<svg><style>${sheet}</style>${body}</svg>`)).toBe(`<svg><style>.s{fill:#fff}</style>${body}</svg>`);
  });
  it('is the drawing itself where nothing moves', () => expect(stillOf(`<svg><style>.s{fill:#fff}</style></svg>`)).toBe('<svg><style>.s{fill:#fff}</style></svg>'));
});
