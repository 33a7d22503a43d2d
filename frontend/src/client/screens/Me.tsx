import { device, settings } from '../../outbox';
import { Button } from '../../shared/form/Button';
import { updateWaiting, useNewVersion as takeNewVersion } from '../../sw/register';
import { Later } from '../parts/Later';
import { Screen } from '../parts/Screen';
import { dayNow, progressFor } from '../phone';
import { mainSession } from '../session/day';
import { standing } from '../session/progress';
import { rest } from '../session/rest';
import { t } from '../words';
import { HealthUnderMe } from './health/Offer';
import { Looks } from './me/Looks';
import { OnThisPhone } from './me/OnThisPhone';
import { Remove } from './me/Remove';
import { InstallHint, WhatItIs } from './pair/parts';

/** Somebody stands among the stones of today: not the moment to load the app again. */
function isAmongStones(): boolean {
  const main = mainSession(dayNow.value, progressFor);
  if (!main) return false;
  const progress = progressFor(main.planned_id);
  return rest.value !== null || (standing(main.session, progress) === 'partly' && !progress.finished);
}

/** The build's own mark, out of its file name: what to tell when something is odd. */
const build = /index-([\w-]+)\.js/.exec(document.querySelector<HTMLScriptElement>('script[type=module]')?.src ?? '')?.[1] ?? 'dev';

function ThisApp() {
  return (
    <section class="block">
      <h2>{t('versionTitle')}</h2>
      <p>{t('versionText', { version: build })}</p>
      {updateWaiting.value && !isAmongStones() && (
        <>
          <p>{t('updateText')}</p>
          <Button small onClick={takeNewVersion}>{t('updateUse')}</Button>
        </>
      )}
    </section>
  );
}

export function Me() {
  return (
    <Screen title={settings.value?.display_name ?? device.value?.client_name ?? t('me')} tabs>
      <OnThisPhone />
      <HealthUnderMe />
      <Looks />
      <InstallHint />
      <WhatItIs />
      <ThisApp />
      <Later load={() => import('./me/myData')} />
      <Remove />
    </Screen>
  );
}
