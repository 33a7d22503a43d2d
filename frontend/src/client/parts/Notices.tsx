import { clocks, connection, outdated, tryAgain, unsendable } from '../../outbox';
import { Button, ButtonLink } from '../../shared/form/Button';
import { Link } from '../../shared/router';
import { StorageTrouble } from '../screens/pair/parts';
import { sharedWaits } from '../walkfile/shared';
import { localeTag } from '../../shared/words/mechanism';
import { firstName } from '../phone';
import { attempt } from '../session/actions';
import { t } from '../words';
import { Later } from './Later';

const onClock = (at: string): string => new Date(at).toLocaleString(localeTag(), { dateStyle: 'short', timeStyle: 'short' });

/** What stands in the way of keeping or sending. Nothing when nothing does. */
export function Notices() {
  return (
    <>
      <StorageTrouble />
      {sharedWaits.value && <section class="sheet"><Link class="tap" to="/walk">{t('shareWaits')}</Link></section>}
      {outdated.value && (
        <p class="urgent" role="alert">
          {t('outdatedText')} <button type="button" class="link" onClick={() => location.reload()}>{t('reload')}</button>
        </p>
      )}
      {unsendable.value.length > 0 && (
        <section class="sheet" role="alert">
          <p>{t('unsendable', { n: unsendable.value.length, practitioner: firstName.value })}</p>
          <div class="row"><Button small onClick={() => void attempt(tryAgain)}>{t('tryAgain')}</Button></div>
        </section>
      )}
      {clocks.value && <p class="note">{t('clockOff', { phone: onClock(clocks.value.phone), practice: onClock(clocks.value.practice) })}</p>}
      {connection.value === 'erased' && <Later load={() => import('../screens/me/erased')} />}
      {connection.value === 'revoked' && (
        <section class="sheet">
          <h2>{t('removedTitle')}</h2>
          <p class="note">{t('removedText')}</p>
          <div class="row"><ButtonLink small to="/pair">{t('alreadyGo')}</ButtonLink></div>
        </section>
      )}
    </>
  );
}
