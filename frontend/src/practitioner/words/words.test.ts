import { expect, it } from 'vitest';
import type { Catalog, Entry } from '../../shared/words/mechanism';
import de from './de';
import en from './en';

const slots = (entry: Entry): string[] =>
  typeof entry === 'string' ? [...entry.matchAll(/\{(\w+)\}/g)].map(([, name]) => name as string).sort() : [...new Set([...slots(entry.other), 'n'])].sort();

it('has the same keys and placeholders in both languages', () => {
  expect(Object.keys(de).sort()).toEqual(Object.keys(en).sort());
  for (const [key, entry] of Object.entries(en)) expect([key, slots((de as Record<string, Entry>)[key] as Entry)]).toEqual([key, slots(entry)]);
});

it('leaves nothing in German as it was in English, but for names and bare placeholders', () => {
  const alike = new Set([
    'appName', 'age', 'messageFrom', 'plannedDayWords', 'decisionLine', 'clientName', 'versionLine', 'told_symptom_reported', 'sugDeclinedLine', 'pskTitle',
  ]);
  const same = Object.entries(en).filter(([key, entry]) => JSON.stringify(entry) === JSON.stringify((de as Record<string, Entry>)[key])).map(([key]) => key);
  expect(same.filter((key) => !alike.has(key))).toEqual([]);
});

it('has each word in one file only: of two, the later would silently win', () => {
  const parts = import.meta.glob<Record<string, Catalog>>(['./en/*.ts', './de/*.ts', '!./*/index.ts', '!./*/library.ts', '!./*/editor.ts', '!./*/own.ts', '!./*/custody.ts'], { eager: true });
  for (const language of ['en', 'de']) {
    const all = Object.entries(parts).filter(([path]) => path.startsWith(`./${language}/`)).flatMap(([, module]) => Object.values(module).flatMap(Object.keys));
    expect(all.length).toBeGreaterThan(100);
    expect(all.filter((key, at) => all.indexOf(key) !== at)).toEqual([]);
  }
});
