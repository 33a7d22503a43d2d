import { endEverySession, endOtherSessions, endSession, type OpenSession } from '../api/account';
import { useResource } from '../api/resource';
import { leave, me } from '../api/session';
import type { Items } from '../api/types';
import { Button } from '../form/Button';
import { moment } from '../parts/heard';
import { FailureLine, ReadFailure, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';

const BROWSERS: Record<string, string> = { firefox: 'Firefox', chrome: 'Chrome', edge: 'Edge', safari: 'Safari' };
const SYSTEMS: Record<string, string> = { windows: 'Windows', macos: 'macOS', linux: 'Linux', android: 'Android', ios: 'iOS', chromeos: 'ChromeOS' };

/** Browser and device in words. */
export function whereWords({ browser, system }: Pick<OpenSession, 'browser' | 'system'>): string {
  return t('sesOn', { browser: BROWSERS[browser] ?? t('sesUnknownBrowser'), system: SYSTEMS[system] ?? t('sesUnknownSystem') });
}

function One({ one, onEnd }: { one: OpenSession; onEnd: () => void }) {
  const zone = me.value?.practice.time_zone ?? 'UTC';
  const [since, used, name] = [moment(one.signed_in_at, zone), moment(one.last_seen_at, zone), whereWords(one)];
  return (
    <li>
      <b>{name}</b>
      <span class="soft">{[one.here && t('sesHere'), t('sesSince', { time: since }), t('sesUsed', { time: used })].filter(Boolean).join(' · ')}</span>
      {!one.here && <Button small aria-label={t('sesEndNamed', { name, time: used })} onClick={onEnd}>{t('sesEnd')}</Button>}
    </li>
  );
}

/** Where one is signed in, and the ways out. */
export function Sessions() {
  const { data, asOf, failure, reload } = useResource<Items<OpenSession>>('/account/sessions');
  const { failure: notEnded, run } = useWrite();
  const end = async (one: OpenSession) => {
    if (await run(() => endSession(one.id))) say(t('sesEnded', { name: whereWords(one) }));
    void reload();
  };
  const endOthers = async () => {
    if (await run(endOtherSessions)) say(t('sesOthersEnded'));
    void reload();
  };
  const endAll = async () => {
    if (await run(endEverySession)) leave();
  };
  return (
    <>
      <p class="soft">{t('sesText')}</p>
      <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} />
      {!data && !failure && <p role="status">{t('loading')}</p>}
      <ul class="people">{data?.items.map((one) => <One key={one.id} one={one} onEnd={() => void end(one)} />)}</ul>
      <FailureLine failure={notEnded} />
      <p class="actions">
        {(data?.items.length ?? 0) > 1 && <Button small onClick={() => void endOthers()}>{t('sesEndOthers')}</Button>}
        <Button small onClick={() => void endAll()}>{t('sesEndAll')}</Button>
      </p>
    </>
  );
}
