import { describe, expect, it } from 'vitest';
import { drawingUrl } from '../../shared/drawing';
import { content } from '../testing/sample';
import { keepDrawings, wantedDrawings } from './drawings';
import type { Exercise } from './library';

const rung = (variant: string, drawn?: boolean) => ({
  variant, name: variant, short: '', sides: 'each' as const, kit: [], how: [], dose: {}, load: 'none' as const, ...(drawn === undefined ? {} : { drawn }),
});
const stepDown: Exercise = {
  code: 'step-down', name: 'Step-down', why: '', sides: 'each', cues: [], faults: [], cautions: [],
  ladder: [rung('rail', true), rung('step-10', true), rung('step-15', true), rung('step-20', false), rung('step-20-pack', true)],
};
const both = (variant: string) => [drawingUrl('step-down', variant, 'still'), drawingUrl('step-down', variant, 'moving')];

/** A cache of the browser's shape. */
class Kept {
  readonly held = new Map<string, Response>();
  constructor(...urls: string[]) { for (const url of urls) this.held.set(url, new Response('old')); }
  keys = async () => [...this.held.keys()].map((url) => ({ url: `https://practice.example${url}` }));
  delete = async (url: string) => this.held.delete(url.replace('https://practice.example', ''));
  put = async (url: string, answer: Response) => void this.held.set(url, answer);
}
const asCache = (kept: Kept) => kept as unknown as Cache;
const picture = () => new Response('<svg/>', { headers: { 'Content-Type': 'image/svg+xml' } });

function network(answer: () => Response) {
  const asked: string[] = [];
  const ask = (async (url: string) => { asked.push(url); return answer(); }) as unknown as typeof fetch;
  return { asked, ask };
}

describe('which drawings are kept', () => {
  it('those of what is prescribed and of the rungs beside it, where drawn', () => {
    expect(wantedDrawings([{ content, exercises: [stepDown] }])).toEqual([...both('step-15'), ...both('step-10')]);
  });
  it('each once, whatever number of programs uses it', () => {
    const one = { content, exercises: [stepDown] };
    expect(wantedDrawings([one, one])).toHaveLength(4);
  });
  it('none for a program from before there were drawings', () => {
    const before = { ...stepDown, ladder: stepDown.ladder.map(({ variant }) => rung(variant)) };
    expect(wantedDrawings([{ content, exercises: [before] }])).toEqual([]);
  });
});

describe('keeping them', () => {
  it('asks for what is not there, leaves what is, evicts the rest', async () => {
    const kept = new Kept('/a.svg', '/old.svg');
    const { asked, ask } = network(picture);
    expect(await keepDrawings(['/a.svg', '/b.svg'], asCache(kept), ask, false)).toBe(true);
    expect(asked).toEqual(['/b.svg']);
    expect([...kept.held.keys()].sort()).toEqual(['/a.svg', '/b.svg']);
  });
  it('asks for all anew when it is time', async () => {
    const { asked, ask } = network(picture);
    const kept = new Kept('/a.svg');
    await keepDrawings(['/a.svg'], asCache(kept), ask, true);
    expect(asked).toEqual(['/a.svg']);
    expect(await kept.held.get('/a.svg')!.text()).toBe('<svg/>');
  });
  it.each([
    ['a sign-in page', () => new Response('<html>', { headers: { 'Content-Type': 'text/html' } })],
    ['not found', () => new Response('{}', { status: 404, headers: { 'Content-Type': 'application/problem+json' } })],
  ])('never keeps %s, and loses nothing to it', async (_, answer) => {
    const kept = new Kept('/a.svg');
    expect(await keepDrawings(['/a.svg', '/b.svg'], asCache(kept), network(answer).ask, true)).toBe(false);
    expect([...kept.held.keys()]).toEqual(['/a.svg']);
    expect(await kept.held.get('/a.svg')!.text()).toBe('old');
  });
  it('empties itself when everything is taken off the phone', async () => {
    const kept = new Kept('/a.svg');
    await keepDrawings([], asCache(kept), network(picture).ask, false);
    expect(kept.held.size).toBe(0);
  });
});
