import { useState } from 'preact/hooks';
import { Dialog } from '../../shared/Dialog';
import { confirmPairing, refusePairing } from '../api/calls';
import { isProblem } from '../api/request';
import { refreshAbout, useResource } from '../api/resource';
import type { Items, WaitingPairing } from '../api/types';
import { Button } from '../form/Button';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { FailureLine, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { Doing } from '../rights/Needs';
import { t } from '../words';

function Compare({ pairing, onClose }: { pairing: WaitingPairing; onClose: () => void }) {
  const [number, setNumber] = useState('');
  const [missing, setMissing] = useState(false);
  const { failure, run } = useWrite();
  const name = pairing.client_name;
  const differs = isProblem(failure, 'check-number-differs');
  const finish = async (write: () => Promise<unknown>, told: string) => {
    if (!(await run(write))) return;
    say(told);
    void refreshAbout(pairing.client_id);
    onClose();
  };
  const confirm = (event: Event) => {
    event.preventDefault();
    const digits = number.replace(/\D/g, '');
    setMissing(digits.length !== 4);
    if (digits.length === 4) void finish(() => confirmPairing(pairing.id, digits), t('phoneConfirmed', { name }));
  };
  return (
    <Form onSubmit={confirm} noValidate>
      <p>{t('compareText', { name })}</p>
      <Field label={t('compareNumber')} name="check_number" inputMode="numeric" autoComplete="off" value={number} onInput={setNumber}
        error={missing ? t('compareMissing') : differs ? t('compareDiffers', { name }) : null} />
      <FailureLine failure={differs ? null : failure} />
      <div class="foot">
        <Button kind="main" small type="submit">{t('confirmPhone')}</Button>
        <Button small onClick={() => void finish(() => refusePairing(pairing.id), t('phoneRefused'))}>{t('refusePhone')}</Button>
        <Button small kind="quiet" onClick={onClose}>{t('cancel')}</Button>
      </div>
    </Form>
  );
}

/** Phones that wait until someone has compared the number they show. `client`: only those of one person. */
export function Pairings({ client }: { client?: string }) {
  const { data } = useResource<Items<WaitingPairing>>('/pairings');
  const [open, setOpen] = useState<WaitingPairing | null>(null);
  const waiting = (data?.items ?? []).filter((pairing) => !client || pairing.client_id === client);
  return (
    <Doing>
      <div role="status">
        {waiting.map((pairing) => (
          <p class="banner" key={pairing.id}>
            {t('waitingPairing', { name: pairing.client_name })}
            <Button small aria-label={t('comparePhoneOf', { name: pairing.client_name })} onClick={() => setOpen(pairing)}>{t('compare')}</Button>
          </p>
        ))}
      </div>
      <Dialog open={open !== null} title={t('compareTitle')} onClose={() => setOpen(null)}>
        {open && <Compare pairing={open} onClose={() => setOpen(null)} />}
      </Dialog>
    </Doing>
  );
}
