import { describe, expect, it } from 'vitest';
import type { Catalog, Entry } from '../../shared/words/mechanism';
import { SYMPTOMS } from '../care/symptoms';
import { de as own } from '../screens/me/ownWords';
import de from './de';
import en from './en';

const forms = (entry: Entry): string[] => (typeof entry === 'string' ? [entry] : [entry.one, entry.other]);
const slots = (entry: Entry): string[] => [...new Set(forms(entry).flatMap((text) => text.match(/\{\w+\}/g) ?? []))].sort();
const [english, german] = [en as Catalog, de as Catalog];
const keys = Object.keys(english);

const parts = import.meta.glob<Record<string, Catalog>>(['./en/*.ts', './de/*.ts'], { eager: true });

describe('the phone app in two languages', () => {
  it('has each word in one file only: of two, the later would silently win', () => {
    for (const language of ['en', 'de']) {
      const all = Object.entries(parts).filter(([path]) => path.startsWith(`./${language}/`)).flatMap(([, module]) => Object.values(module).flatMap(Object.keys));
      expect(all.length).toBeGreaterThan(100);
      expect(all.filter((key, at) => all.indexOf(key) !== at)).toEqual([]);
    }
  });
  it('says the same with the same names filled in', () => {
    expect(Object.keys(german).sort()).toEqual([...keys].sort());
    for (const key of keys) expect([key, slots(german[key]!)]).toEqual([key, slots(english[key]!)]);
  });
  it('is translated: hardly a sentence is the same in both', () => {
    const sentences = keys.filter((key) => forms(english[key]!)[0]!.split(' ').length > 3);
    expect(sentences.filter((key) => forms(english[key]!)[0] === forms(german[key]!)[0])).toEqual([]);
  });
  it('speaks plainly: short sentences, no blame, no words of the trade', () => {
    const banned = /\b(missed|failed|failure|adherence|compliance|abnormal|well done|great job)\b/i;
    for (const key of keys) {
      for (const text of forms(english[key]!)) {
        expect([key, banned.test(text)]).toEqual([key, false]);
        const longest = Math.max(...text.split(/[.:!?] /).map((sentence) => sentence.split(' ').length));
        expect([key, longest <= 18]).toEqual([key, true]);
      }
    }
  });
  it('speaks to one person in German, and never formally', () => {
    const formal = /\bIhr(e[mnrs]?)?\b|\bIhnen\b|\b\p{L}+en Sie\b|\bSie (haben|können|wollen|sagen)\b/u;
    const all = [...keys.flatMap((key) => forms(german[key]!)), ...Object.values(own)];
    expect(all.filter((text) => formal.test(text))).toEqual([]);
  });
  it('has words for every sign to stop for, and says everywhere that it calls nobody', () => {
    for (const symptom of Object.keys(SYMPTOMS)) expect(keys).toContain(`symptom_${symptom}`);
    for (const key of ['redFlagsDo', 'whatItIsNot', 'toldNobody'] as const) expect(en[key]).toMatch(/calls nobody/);
    expect(en.doNow).toMatch(/local emergency number now/);
  });
});
