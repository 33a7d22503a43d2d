import { expect, it } from 'vitest';
import { language } from '../../shared/words/mechanism';
import { failureWords } from './failureWords';

const refused = (status: number, code: string, detail: string) =>
  failureWords({ kind: 'problem', problem: { status, code, title: 'Title', detail, type: 'about:blank' }, retryAfterS: null } as never);

it('says that something is gone in the words of the page, not in the server\'s English', () => {
  language.value = 'en';
  expect(refused(404, 'not-found', 'There is no such client in this practice.')).toBe('This is not here. It may have been erased, or the link may be wrong.');
});

it('prefers the words for a code to those for its status, and else repeats what the server said', () => {
  expect(refused(404, 'link-not-valid', 'Gone.')).toContain('This link does not work.');
  expect(refused(409, 'something-new', 'Two at once.')).toContain('Two at once.');
});
