import { Kept } from '../parts/Kept';
import { dayWords } from '../parts/names';
import { BackLink, Screen } from '../parts/Screen';
import { locks } from '../phone';
import { t } from '../words';
import { Locked } from './care/Locked';
import { NotFound } from './NotFound';
import { SessionBody, SessionFoot, sessionTitle, StopEarly, usePlanned } from './today/SessionView';

/** Any planned session by itself: one of another day that is done now, or another one of today. */
export function Session({ params }: { params: Record<string, string> }) {
  const planned = usePlanned(params.id ?? '');
  if (!planned) return <NotFound />;
  if (locks.value.length > 0) return <Locked />;
  return (
    <Screen
      title={sessionTitle(planned)}
      where={<><BackLink to="/">{t('today')}</BackLink><span>{dayWords(planned.day.date)}</span></>}
      under={<Kept planned_id={planned.session.kind === 'circuit' ? planned.planned_id : null} />}
      foot={<SessionFoot planned={planned} />}
    >
      <SessionBody planned={planned} />
      <StopEarly planned={planned} />
    </Screen>
  );
}
