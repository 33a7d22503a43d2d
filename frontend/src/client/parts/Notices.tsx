import { connection, outdated, tryAgain, unsendable } from '../../outbox';
import { Button, ButtonLink } from '../../shared/form/Button';
import { Link } from '../../shared/router';
import { StorageTrouble } from '../screens/pair/parts';
import { sharedWaits } from '../walkfile/shared';
import { firstName } from '../phone';
import { attempt } from '../session/actions';
import { t } from '../words';
import { Later } from './Later';

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
