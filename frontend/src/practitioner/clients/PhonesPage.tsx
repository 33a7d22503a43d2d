import { useEffect, useRef, useState } from 'preact/hooks';
import { Dialog } from '../../shared/Dialog';
import { dayShort, today } from '../../shared/dates';
import { revokeDevice } from '../api/calls';
import { refreshAbout, useResource } from '../api/resource';
import type { Client, Device, Items } from '../api/types';
import { Button } from '../form/Button';
import { Link } from '../form/Link';
import { Pairings } from '../caseload/Pairings';
import { moment } from '../parts/heard';
import { FailureLine, ReadFailure, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { Doing } from '../rights/Needs';
import { t } from '../words';
import { Invite } from './Invite';

const nameOf = (device: Device): string => device.label || t('phoneUnnamed');

export function phoneWords(device: Device, zone: string): string[] {
  const day = (at: string) => dayShort(today(new Date(at), zone));
  return [
    t('phonePaired', { date: day(device.paired_at) }),
    device.revoked_at ? t('phoneRevoked', { date: day(device.revoked_at) }) : device.waiting ? t('phoneWaits') : '',
    device.last_heard_at ? t('phoneHeard', { time: moment(device.last_heard_at, zone) }) : t('phoneNotHeard'),
    t('phoneEntries', { n: device.acknowledged_through }),
  ].filter(Boolean);
}

function Revoke({ device, client, onClose }: { device: Device; client: string; onClose: () => void }) {
  const { failure, run } = useWrite();
  const label = nameOf(device);
  const revoke = async () => {
    if (!(await run(() => revokeDevice(device.id)))) return;
    say(t('revokeDone', { label }));
    void refreshAbout(client);
    onClose();
  };
  return (
    <>
      <p>{t('revokeText', { label })}</p>
      <FailureLine failure={failure} />
      <div class="foot"><Button small kind="main" onClick={() => void revoke()}>{t('revoke')}</Button> <Button small onClick={onClose}>{t('cancel')}</Button></div>
    </>
  );
}

function Phones({ client, devices }: { client: Client; devices: readonly Device[] }) {
  const [leaving, setLeaving] = useState<Device | null>(null);
  return (
    <section>
      <h2>{t('phonesList')}</h2>
      {devices.length === 0 && <p class="soft">{t('phonesNone')}</p>}
      <ul class="people">
        {devices.map((device) => (
          <li key={device.id}>
            <b>{nameOf(device)}</b>
            <span class="soft">{phoneWords(device, client.time_zone).join(' · ')}</span>
            {!device.revoked_at && <Button small aria-label={t('revokePhone', { label: nameOf(device) })} onClick={() => setLeaving(device)}>{t('revoke')}</Button>}
          </li>
        ))}
      </ul>
      <Dialog open={leaving !== null} title={t('revokeTitle')} onClose={() => setLeaving(null)}>
        {leaving && <Revoke device={leaving} client={client.id} onClose={() => setLeaving(null)} />}
      </Dialog>
    </section>
  );
}

/** Says when a phone has taken the code, since that happens on another screen. */
function useArrival(devices: readonly Device[] | undefined): void {
  const known = useRef<number | null>(null);
  useEffect(() => {
    if (!devices) return;
    if (known.current !== null && devices.length > known.current) say(t('phonePairedNow'));
    known.current = devices.length;
  }, [devices]);
}

export function PhonesPage({ params }: { params: Record<string, string> }) {
  const id = params.id ?? '';
  const { data: client, asOf, failure, reload } = useResource<Client>(`/clients/${encodeURIComponent(id)}`, id);
  const { data: devices } = useResource<Items<Device>>(`/clients/${encodeURIComponent(id)}/devices`, null);
  useArrival(devices?.items);
  return (
    <main class="form-page">
      <h1>{client ? t('phonesTitle', { name: client.display_name }) : t('loading')}</h1>
      <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} />
      {client && <p><Link to={`/clients/${id}`}>{t('backToPerson', { name: client.display_name })}</Link></p>}
      <Pairings client={id} />
      {client && <Doing><Invite person={client} /></Doing>}
      {client && devices && <Phones client={client} devices={devices.items} />}
    </main>
  );
}
