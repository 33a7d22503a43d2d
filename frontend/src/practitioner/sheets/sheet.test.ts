import { expect, it } from 'vitest';
import { paperFor, requestOf } from './sheet';

const sheet = { paper: 'a4', large: false, language: 'en', session: null, pairing: false } as const;

it('asks for a plain sheet without writing anything', () => {
  expect(requestOf('c1', sheet)).toEqual({ method: 'GET', path: '/clients/c1/programs/current/sheet.pdf?paper=a4&large=false&language=en' });
});

it('posts only where an invitation is to be written', () => {
  expect(requestOf('c1', { ...sheet, pairing: true }).method).toBe('POST');
});

it('names the one session that was chosen', () => {
  expect(requestOf('c1', { ...sheet, session: 's&1' }).path).toMatch(/&session=s%261$/);
});

it('takes the paper of the land, and A4 where none is told', () => {
  expect(['en-US', 'es-MX', 'de-AT', 'en', 'not a tag'].map(paperFor)).toEqual(['letter', 'letter', 'a4', 'a4', 'a4']);
});
