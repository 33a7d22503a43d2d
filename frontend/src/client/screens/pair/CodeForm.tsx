import { useState } from 'preact/hooks';
import { normalizeCode, NotSaved, PairingFailed, PhoneFull } from '../../../outbox';
import { Button } from '../../../shared/form/Button';
import { Field } from '../../../shared/form/Field';
import { t } from '../../words';
import { ask, linkCode } from './pending';

/** Why pairing did not work, in words that say what to do. */
export function failureWords(error: unknown): string {
  if (error instanceof PhoneFull) return t('storageFull');
  if (error instanceof NotSaved) return t('storageRefused');
  if (!(error instanceof PairingFailed)) return t('codeFailed');
  return t(({ code: 'codeWrong', too_many: 'codeTooOften', unreachable: 'codeOffline' } as const)[error.reason]);
}

async function fromClipboard(): Promise<{ text: string } | { problem: string }> {
  try {
    const text = await navigator.clipboard.readText();
    return text.trim() ? { text } : { problem: t('pasteEmpty') };
  } catch {
    return { problem: t('pasteRefused') };
  }
}

/** A code typed, pasted, or out of the link that opened the app: then there is nothing to type. */
export function CodeForm({ link }: { link: string | null }) {
  const [typed, setTyped] = useState(link ?? '');
  const [problem, setProblem] = useState<string | null>(null);
  const [asking, setAsking] = useState(false);
  const send = async () => {
    if (asking) return;
    const code = normalizeCode(typed);
    if (!code) return setProblem(t('codeNotACode'));
    setAsking(true);
    setProblem(null);
    await ask(code).catch((error: unknown) => setProblem(failureWords(error)));
    setAsking(false);
  };
  const paste = async () => {
    const found = await fromClipboard();
    if ('text' in found) setTyped(found.text.trim());
    setProblem('problem' in found ? found.problem : null);
  };
  return (
    <form class="code-form" onSubmit={(event) => { event.preventDefault(); void send(); }}>
      {link ? <p class="trouble" role="alert">{problem}</p> : <Field label={t('codeLabel')} hint={t('codeHint')} value={typed} error={problem} autoComplete="one-time-code" onInput={setTyped} />}
      <div class={link ? 'stack' : 'row'}>
        {!link && <Button onClick={() => void paste()}>{t('paste')}</Button>}
        <Button kind="main" type="submit">{t('askPractice')}</Button>
        {link && <Button kind="quiet" onClick={() => (linkCode.value = null)}>{t('linkOther')}</Button>}
      </div>
      <p class="note" role="status">{asking && t('asking')}</p>
    </form>
  );
}
