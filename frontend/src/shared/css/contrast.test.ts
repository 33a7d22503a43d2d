import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync(new URL('./tokens.css', import.meta.url), 'utf8');
const blocks = { light: css.slice(0, css.indexOf('@media (prefers-color-scheme: dark)')), dark: css.slice(css.indexOf(':root[data-theme="dark"]')) };
const system = css.slice(css.indexOf('@media (prefers-color-scheme: dark)'), css.indexOf(':root[data-theme="dark"]'));
const colors = (text: string) => Object.fromEntries([...text.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map((m) => [m[1], m[2]])) as Record<string, string>;

/** WCAG 2.x relative luminance. */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16) / 255).map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4)) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function ratio(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

const GROUNDS = ['paper', 'sheet', 'fold'];
const PAIRS: [ink: string, ground: string, least: number][] = [
  ...GROUNDS.flatMap((ground): [string, string, number][] => [['ink', ground, 7], ['ink-soft', ground, 7], ['line', ground, 3]]),
  ...['paper', 'sheet'].flatMap((ground): [string, string, number][] => [['forest', ground, 7], ['water', ground, 7], ['clay', ground, 7]]),
  ['on-solid', 'forest-solid', 7], ['ink', 'water-wash', 7], ['water', 'water-wash', 4.5], ['clay', 'clay-wash', 4.5], ['forest', 'forest-wash', 4.5], ['forest-solid', 'paper', 3],
];

describe.each(['light', 'dark'] as const)('contrast, %s', (name) => {
  const values = colors(blocks[name]);
  it.each(PAIRS)('%s on %s is at least %d', (ink, ground, least) => expect(ratio(values[ink]!, values[ground]!)).toBeGreaterThanOrEqual(least));
});

it('the switch to dark and the device\'s own dark are the same map', () => expect(colors(system)).toEqual(colors(blocks.dark)));
