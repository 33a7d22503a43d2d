import { useState } from 'preact/hooks';
import { receivedCount, removeAll, savedCount } from '../../../outbox';
import { Dialog } from '../../../shared/Dialog';
import { Button } from '../../../shared/form/Button';
import { navigate } from '../../../shared/router';
import { t } from '../../words';
import { forgetShared } from '../../../sw/shared';
import { loadShared } from '../../walkfile/shared';

/** Everything off this phone, with what would be lost said plainly first. */
export function Remove() {
  const [open, setOpen] = useState(false);
  const [failed, setFailed] = useState(false);
  const unsent = savedCount.value - receivedCount.value;
  const remove = () => removeAll().then(forgetShared).then(loadShared).then(() => navigate('/', { replace: true }), () => setFailed(true));
  return (
    <section class="block">
      <h2>{t('removeTitle')}</h2>
      <p>{t('removeText')}</p>
      <div class="stack"><Button wide onClick={() => setOpen(true)}>{t('removeButton')}</Button></div>
      <Dialog open={open} title={t('removeAsk')} onClose={() => setOpen(false)}>
        <p>{unsent > 0 ? <b class="call">{t('removeUnsent', { n: unsent })}</b> : t('removeAllSent')}</p>
        <p class="trouble" role="alert">{failed && t('removeFailed')}</p>
        <div class="foot">
          <Button kind="main" onClick={() => setOpen(false)}>{t('removeNo')}</Button>
          <Button onClick={() => void remove()}>{t(unsent > 0 ? 'removeYesLose' : 'removeYes')}</Button>
        </div>
      </Dialog>
    </section>
  );
}
