/** What is typed of a practice's words to its clients, kept in memory until it is saved. */
import { useEffect, useState } from 'preact/hooks';
import { changePracticeWords, type PracticeWords } from '../api/account';
import { draft, dropDraft } from '../api/drafts';
import { failureFrom } from '../api/request';
import { refreshAll } from '../api/resource';
import { failureWords } from '../parts/failureWords';
import { say } from '../parts/status';
import { useLeaveWarning } from '../parts/useLeaveWarning';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';
import { errorsOf, isSame, wordsOf } from './clientWords';

const NAME = 'practice.words';

async function putBack(before: PracticeWords): Promise<void> {
  try {
    await changePracticeWords(before);
  } catch (error) {
    return say(failureWords(failureFrom(error)), () => void putBack(before));
  }
  refreshAll();
  say(t('wrdPutBack'));
}

/** `read`: what clients read now, by the server's newest answer; `reload` asks for it again. */
export function useClientWords(read: PracticeWords, reload: () => Promise<void>) {
  const kept = draft(NAME);
  const typed = kept.value ? (JSON.parse(kept.value) as PracticeWords) : null;
  const dirty = typed !== null && !isSame(typed, read);
  const form = typed ?? wordsOf(read);
  const [attempt, setAttempt] = useState(0);
  const { busy, failure, setFailure, run } = useWrite();
  const found = errorsOf(form);
  useLeaveWarning(dirty);
  const change = (next: PracticeWords) => void (kept.value = JSON.stringify(next));
  const drop = () => {
    kept.value = '';
    dropDraft(NAME);
  };
  // What is typed is dropped once it is what clients read, not before: the answer to a save may be on its way.
  useEffect(() => void (typed && !dirty && drop()), [typed !== null, dirty]);
  const save = async () => {
    setAttempt(attempt + 1);
    if (Object.keys(found).length > 0) return;
    const before = wordsOf(read);
    const saved = await run(async () => {
      change(await changePracticeWords(form));
      await reload();
      return true;
    });
    if (!saved) return;
    setAttempt(0);
    say(t('wrdSaved'), () => void putBack(before));
  };
  const discard = () => {
    const before = kept.value;
    drop();
    setAttempt(0);
    setFailure(null);
    say(t('wrdDiscarded'), () => { draft(NAME).value = before; });
  };
  return { form, dirty, busy, failure, attempt, errors: attempt > 0 ? found : {}, change, save, discard };
}
