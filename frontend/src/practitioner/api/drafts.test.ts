import { expect, it } from 'vitest';
import { draft, dropDraft, forgetDrafts } from './drafts';

it('keeps drafts by name until they are dropped or the desk changes hands', () => {
  draft('note.f1').value = 'Called.';
  expect(draft('note.f1').value).toBe('Called.');
  expect(draft('note.f2', 'Start').value).toBe('Start');
  dropDraft('note.f1');
  expect(draft('note.f1').value).toBe('');
  draft('note.f1').value = 'Other.';
  forgetDrafts();
  expect(draft('note.f1').value).toBe('');
});
