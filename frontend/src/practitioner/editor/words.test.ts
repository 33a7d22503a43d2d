import { describe, expect, it } from 'vitest';
import de from '../words/de/editor';
import en from '../words/en/editor';
import { coded } from './words';

const slots = (entry: unknown): string[] => [...new Set(JSON.stringify(entry).match(/\{\w+\}/g) ?? [])].sort();

describe('the words of the editor', () => {
  it('are the same in both languages, placeholder for placeholder', () => {
    expect(Object.keys(de).sort()).toEqual(Object.keys(en).sort());
    for (const [key, entry] of Object.entries(en)) expect([key, slots((de as Record<string, unknown>)[key])]).toEqual([key, slots(entry)]);
  });

  it('say a code, and show one that has no word yet', () => {
    expect(coded('kit', 'band')).toBe('band');
    expect(coded('quality', 'single_leg_strength')).toBe('single-leg strength');
    expect(coded('kit', 'trampoline')).toBe('trampoline');
  });
});
