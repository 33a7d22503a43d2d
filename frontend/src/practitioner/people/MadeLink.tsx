import { useEffect, useId, useRef } from 'preact/hooks';
import type { ColleagueLink } from '../api/account';
import { me } from '../api/session';
import { Input } from '../form/bare';
import { Button } from '../form/Button';
import { moment } from '../parts/heard';
import { useCopy } from '../parts/useCopy';
import { t } from '../words';

/** A link by which one colleague joins or comes back, shown once, to be handed over. */
export function MadeLink({ name, link, onClose }: { name: string; link: ColleagueLink; onClose: () => void }) {
  const field = useRef<HTMLInputElement>(null);
  const id = useId();
  const { told, copy } = useCopy(link.url, { copied: t('linkCopied'), refused: t('linkCopyFailed') }, () => field.current?.select());
  useEffect(() => field.current?.focus(), []);
  const time = moment(link.expires_at, me.value?.practice.time_zone ?? 'UTC');
  return (
    <div class="invitation">
      <div class="field"><label for={id}>{t('pplLinkFor', { name })}</label><Input id={id} readOnly ref={field} value={link.url} /></div>
      <p>{t('pplLinkText', { time, name })}</p>
      <p class="actions"><Button kind="main" small onClick={() => void copy()}>{t('recCopy')}</Button> <Button small kind="quiet" onClick={onClose}>{t('close')}</Button> <span role="status">{told}</span></p>
    </div>
  );
}
