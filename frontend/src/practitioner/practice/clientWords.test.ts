import { expect, it, vi } from 'vitest';
import { errorsOf, isSame, LETTERS_MAX, wordsOf } from './clientWords';

vi.stubGlobal('navigator', { languages: ['en-GB'] });
const words = { emergency_text: 'In the valley dial 144.', reply_time_text: 'We answer on Tuesdays.' };

it('takes both as they are, up to the most letters, spaces around not counted', () => {
  expect(errorsOf(words)).toEqual({});
  expect(errorsOf({ ...words, emergency_text: ` ${'\u{1F6B6}'.repeat(LETTERS_MAX)} ` })).toEqual({});
});

it('says of each what is wrong with it', () => {
  expect(errorsOf({ emergency_text: ' \n', reply_time_text: 'a'.repeat(LETTERS_MAX + 1) })).toEqual({
    emergency_text: 'Please write whom to call in an emergency.',
    reply_time_text: 'At most 300 letters; these are 301.',
  });
});

it('knows the same words again in whatever they come', () => {
  expect(isSame(wordsOf({ ...words, name: 'Thornwater' } as typeof words), words)).toBe(true);
  expect(isSame({ ...words, reply_time_text: '' }, words)).toBe(false);
});
