import { persisted, storage } from '../../../outbox';
import { query } from '../../../shared/router';
import { Later } from '../../parts/Later';
import { sharedWaits } from '../../walkfile/shared';
import { t } from '../../words';
import { isInstalled } from './install';

/** On an iPhone or iPad this comes before the code: a home-screen app has storage of its own. Elsewhere it can wait. */
export const InstallHint = () => (isInstalled() ? null : <Later load={() => import('./homeScreen')} />);

export const WhatItIs = () => (
  <section class="block">
    <h2>{t('whatItIs')}</h2>
    <p>{t('whatItIsText')}</p>
    <p class="urgent">{t('whatItIsNot')}</p>
  </section>
);

/** A walk was shared to a phone that is not let in yet. Nothing otherwise. */
export function SharedWalk() {
  const missed = query.value.get('share') === 'missed';
  if (!sharedWaits.value && !missed) return null;
  return <section class="sheet"><p role="status">{t(sharedWaits.value ? 'shareWaitsPair' : 'shareMissedPair')}</p></section>;
}

const STORAGE = { refused: 'storageRefused', blocked: 'storageBlocked', full: 'storageFull' } as const;

/** What stands in the way of keeping anything. Nothing when nothing does. */
export function StorageTrouble() {
  const state = storage.value;
  return state === null || state === 'works' ? null : <p class="urgent" role="alert">{t(STORAGE[state])}</p>;
}

/** How safely a paired phone keeps what is entered, in words. */
export function StorageWords() {
  if (storage.value !== null && storage.value !== 'works') return <StorageTrouble />;
  return <p class="note">{t(persisted.value === null ? 'storageUnknown' : persisted.value ? 'storageKept' : 'storageNotKept')}</p>;
}
