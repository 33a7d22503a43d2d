import { useState } from 'preact/hooks';
import type { Event } from '../../../outbox';
import { Dialog } from '../../../shared/Dialog';
import { Button } from '../../../shared/form/Button';
import { symptomOf } from '../../care/lock';
import { withdraw } from '../../session/actions';
import { t } from '../../words';

/** A sign that was entered by mistake is taken back: asked once, since it opens training again. */
export function Slip({ event }: { event: Event }) {
  const [open, setOpen] = useState(false);
  const close = () => setOpen(false);
  const take = () => {
    close();
    void withdraw(event.id);
  };
  return (
    <>
      <Button kind="quiet" onClick={() => setOpen(true)}>{t('slip')}</Button>
      <Dialog open={open} title={t('slipAsk')} onClose={close}>
        <p>{t('slipText', { sign: t(`symptom_${symptomOf(event)}`) })}</p>
        <div class="foot">
          <Button kind="main" onClick={close}>{t('slipNo')}</Button>
          <Button onClick={take}>{t('slipYes')}</Button>
        </div>
      </Dialog>
    </>
  );
}
