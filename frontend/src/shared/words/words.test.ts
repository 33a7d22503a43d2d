import { describe, expect, it } from 'vitest';
import { matchPath } from '../router';
import { chooseLanguage, language, makeWords, say } from './mechanism';
import { catalogFaults } from './testing/catalogs';
import de from './de';
import en from './en';

describe('catalogs', () => {
  it('German has the same keys and placeholders as English', () => expect(catalogFaults(en, de)).toEqual([]));
  it('the comparison finds a missing key, a missing placeholder and an empty sentence', () => {
    expect(catalogFaults({ a: '{x}', b: 'b', c: { one: '{n}', other: '{n}' } }, { a: 'x', b: '', c: { one: '1', other: '2' } } as never)).toHaveLength(3);
    expect(catalogFaults({ a: 'a', b: 'b' }, { a: 'a' } as never)).toEqual(['b: missing']);
  });
});

describe('saying', () => {
  it('fills in names and numbers and chooses the plural', () => {
    const entry = { one: '{n} set for {who}', other: '{n} sets for {who}' };
    expect(say(entry, { n: 1, who: 'Emil' }, 'en')).toBe('1 set for Emil');
    expect(say(entry, { n: 0, who: 'Emil' }, 'en')).toBe('0 sets for Emil');
    expect(say(entry, { n: 1234, who: 'Emil' }, 'en')).toBe('1,234 sets for Emil');
  });
  it('ends a sentence with one full stop where what is filled in ends with one', () => {
    expect(say('In Gebrauch seit {date}. {date}: gut.', { date: 'Sa., 28. Nov.' }, 'de')).toBe('In Gebrauch seit Sa., 28. Nov. Sa., 28. Nov.: gut.');
    expect(say('Noch {n}. Weiter …', { n: 3 }, 'de')).toBe('Noch 3. Weiter …');
    expect(say('{what}.', {}, 'de')).toBe('{what}.');
  });
  it('speaks English until the other language is there', () => {
    const t = makeWords({ hello: 'Good day, {name}' }, { de: async () => ({ default: { hello: 'Guten Tag, {name}' } }) });
    language.value = 'de';
    expect(t('hello', { name: 'Emil' })).toBe('Good day, Emil');
    language.value = 'en';
  });
  it('chooses the saved language, then the person\'s list, then English', () => {
    expect(chooseLanguage('de', ['en'])).toBe('de');
    expect(chooseLanguage(null, ['fr-CH', 'de-CH', 'en'])).toBe('de');
    expect(chooseLanguage('xx', ['fr'])).toBe('en');
  });
});

describe('paths', () => {
  it('match part by part and give the named parts', () => {
    expect(matchPath('/clients/:id', '/clients/a%20b')).toEqual({ id: 'a b' });
    expect(matchPath('/', '/')).toEqual({});
    expect(matchPath('/clients/:id', '/clients')).toBeNull();
    expect(matchPath('/season', '/today')).toBeNull();
    expect(matchPath('/x/:id', '/x/%E0%A4%A')).toEqual({ id: '%E0%A4%A' });
  });
});
