import { connection, device, program, storage } from '../outbox';
import { Pages } from '../shared/router';
import { Screen } from './parts/Screen';
import { lastContact } from './phone';
import { otherwise, routes } from './screens';
import { Waiting, Welcome } from './screens/Pair';
import { StorageTrouble } from './screens/pair/parts';
import { linkCode, pairingAnew, pending } from './screens/pair/pending';
import { t } from './words';

/** Paired a moment ago, and nothing has come yet: the only time the app shows that it waits. */
function Fetching() {
  return (
    <Screen title={t('fetching')}>
      <svg class="fetching" viewBox="0 0 300 300" aria-hidden="true">
        <path d="M40 30H220C280 30 280 110 220 110H80C20 110 20 190 80 190H220C280 190 270 270 150 270" />
      </svg>
      <p class="sr" role="status">{t('fetching')}</p>
    </Screen>
  );
}

/** Which part of the app there is to see: none of it before this phone is paired. */
export function App() {
  const known = device.value;
  if (storage.value === 'blocked') return <Screen title="Steadfoot"><StorageTrouble /></Screen>;
  if (!known || linkCode.value || pending.value || pairingAnew.value) return <Welcome />;
  if (known.status === 'awaiting_confirmation') return <Waiting />;
  if (program.value === null && lastContact.value === null && connection.value !== 'unreachable') return <Fetching />;
  return <Pages routes={routes} otherwise={otherwise} />;
}
