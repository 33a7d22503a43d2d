import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import de from '../words/de/custody';
import en from '../words/en/custody';
import { actionWords } from './words';

const slots = (entry: unknown): string[] => [...new Set(JSON.stringify(entry).match(/\{\w+\}/g) ?? [])].sort();

it('says the same in both languages, placeholder for placeholder', () => {
  expect(Object.keys(de).sort()).toEqual(Object.keys(en).sort());
  for (const [key, entry] of Object.entries(en)) expect([key, slots((de as Record<string, unknown>)[key])]).toEqual([key, slots(entry)]);
});

it('has a word for every call of the server, since each can be refused, and none for what is none', () => {
  const types = readFileSync(new URL('../../generated/api.ts', import.meta.url), 'utf8');
  const calls = [...types.slice(types.indexOf('export interface operations')).matchAll(/^ {4}(\w+): \{$/gm)].map(([, name]) => name);
  expect(calls.length).toBeGreaterThan(80);
  expect(Object.keys(en).filter((key) => key.startsWith('act_')).sort()).toEqual(calls.map((name) => `act_${name}`).sort());
  expect(actionWords('readOverview')).toBe('Opened the client’s page');
  expect(actionWords('somethingNew')).toBe('somethingNew');
});
