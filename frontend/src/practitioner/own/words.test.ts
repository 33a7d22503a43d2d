import { expect, it } from 'vitest';
import de from '../words/de/own';
import en from '../words/en/own';
import { named } from './words';

const slots = (entry: unknown): string[] => [...new Set(JSON.stringify(entry).match(/\{\w+\}/g) ?? [])].sort();

it('says the same in both languages, placeholder for placeholder', () => {
  expect(Object.keys(de).sort()).toEqual(Object.keys(en).sort());
  for (const [key, entry] of Object.entries(en)) expect([key, slots((de as Record<string, unknown>)[key])]).toEqual([key, slots(entry)]);
});

it('says a code, and shows one that has no word yet', () => {
  expect(named('fault', 'falls over')).toBe('The person would fall over');
  expect(named('num', 'tail.curl')).toBe('tail.curl');
});
