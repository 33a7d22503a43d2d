import { useEffect, useRef } from 'preact/hooks';
import { Button } from '../form/Button';
import { useCopy } from '../parts/useCopy';
import { useLeaveWarning } from '../parts/useLeaveWarning';
import { t } from '../words';

/** The codes, once. They stay until the person says that they are kept. */
export function RecoveryCodes({ codes, onKept }: { codes: readonly string[]; onKept: () => void }) {
  const heading = useRef<HTMLHeadingElement>(null);
  const { told, copy } = useCopy(codes.join('\n'), { copied: t('recCopied'), refused: t('recCopyFailed') });
  useEffect(() => heading.current?.focus(), []);
  useLeaveWarning(true);
  return (
    <div class="codes-sheet">
      <h3 tabIndex={-1} ref={heading}>{t('recShown')}</h3>
      <p>{t('recOnce')}</p>
      <ol class="recovery tnum">{codes.map((code) => <li key={code}>{code}</li>)}</ol>
      <p class="actions screen-only">
        <Button kind="main" small onClick={onKept}>{t('recKept')}</Button>
        <Button small onClick={() => void copy()}>{t('recCopy')}</Button>
        <Button small onClick={() => print()}>{t('recPrint')}</Button>
        <span role="status">{told}</span>
      </p>
    </div>
  );
}
