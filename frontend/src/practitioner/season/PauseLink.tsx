import type { Overview } from '../api/types';
import { ButtonLink } from '../form/Button';
import { t } from '../words';
import { pauseNoticed } from './pause';

/** Where a pause is noticed and a trip lies ahead: the way to planning the season again, with what is known filled in. */
export function PauseLink({ overview }: { overview: Overview }) {
  const { client, days, flags, goal, ridge } = overview;
  const noticed = goal && goal.days_to > 0 ? pauseNoticed(days, flags, ridge.today) : null;
  if (!noticed) return null;
  return (
    <p class="note">
      {t('seaAfterPause', { reason: t(`seaPause_${noticed.reason}`) })}{' '}
      <ButtonLink small to={`/clients/${client.id}/season?pause=${noticed.reason}&since=${noticed.since}`}>{t('seaPlanAgain')}</ButtonLink>
    </p>
  );
}
