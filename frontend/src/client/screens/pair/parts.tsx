import { device, persisted, storage } from '../../../outbox';
import { Button } from '../../../shared/form/Button';
import { t } from '../../words';
import { installOffer, isInstalled, isIos } from './install';

/** On an iPhone this comes before the code: a home-screen app has storage of its own. */
export function InstallHint() {
  if (isInstalled()) return null;
  const offer = installOffer.value;
  return (
    <section class={isIos() ? 'sheet' : 'block'}>
      <h2>{t(isIos() && !device.value ? 'installFirst' : 'installTitle')}</h2>
      <p>{t(isIos() ? 'installIos' : 'installOther')}</p>
      {offer && <Button small onClick={() => void offer.prompt()}>{t('installNow')}</Button>}
    </section>
  );
}

export const WhatItIs = () => (
  <section class="block">
    <h2>{t('whatItIs')}</h2>
    <p>{t('whatItIsText')}</p>
    <p class="urgent">{t('whatItIsNot')}</p>
  </section>
);

const STORAGE = { refused: 'storageRefused', blocked: 'storageBlocked', full: 'storageFull' } as const;

/** How safely this phone keeps what is entered, in words. */
export function StorageWords() {
  const state = storage.value;
  if (state !== null && state !== 'works') return <p class="urgent" role="alert">{t(STORAGE[state])}</p>;
  return <p class="note">{t(persisted.value === null ? 'storageUnknown' : persisted.value ? 'storageKept' : 'storageNotKept')}</p>;
}
