import { useState } from 'preact/hooks';
import { Button } from '../../../shared/form/Button';
import { Dialog } from '../../../shared/Dialog';
import { navigate } from '../../../shared/router';
import { leaveOut } from '../../session/actions';
import type { Planned } from '../../session/plan';
import type { SetPlace } from '../../session/progress';
import { t } from '../../words';

const REASONS = ['pain', 'too_hard', 'no_time', 'no_kit', 'other'] as const;

/** One set left out on purpose; a reason, no blame. Whoever leaves it out for pain is asked where and how much: that is what is answered with advice. */
export function LeaveOut({ planned, set, hurt }: { planned: Planned; set: SetPlace; hurt: string }) {
  const [open, setOpen] = useState(false);
  const take = async (reason: (typeof REASONS)[number]) => {
    await leaveOut(planned, set, reason);
    setOpen(false);
    if (reason === 'pain') navigate(hurt);
  };
  return (
    <>
      <p class="centered"><Button kind="quiet" onClick={() => setOpen(true)}>{t('leaveOut')}</Button></p>
      <Dialog open={open} title={t('leaveOutTitle')} onClose={() => setOpen(false)}>
        <div class="stack">
          {REASONS.map((reason) => <Button key={reason} wide onClick={() => void take(reason)}>{t(`reason_${reason}`)}</Button>)}
          <Button kind="quiet" wide onClick={() => setOpen(false)}>{t('cancel')}</Button>
        </div>
      </Dialog>
    </>
  );
}
