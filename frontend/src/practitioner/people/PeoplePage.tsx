import { useRef } from 'preact/hooks';
import { requireSecondFactor, withdrawColleague, type People, type Waiting } from '../api/account';
import { confirmed } from '../api/confirm';
import { useResource } from '../api/resource';
import { me } from '../api/session';
import { Button } from '../form/Button';
import { moment } from '../parts/heard';
import { FailureLine, ReadFailure, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';
import { Invite } from './Invite';
import { Person } from './Person';

function WaitingOnes({ waiting, onChanged, onWithdrawn }: { waiting: readonly Waiting[]; onChanged: () => void; onWithdrawn: () => void }) {
  const { failure, run } = useWrite();
  const zone = me.value?.practice.time_zone ?? 'UTC';
  const withdraw = async ({ id, display_name: name }: Waiting) => {
    if (!(await run(() => withdrawColleague(id)))) return onChanged();
    say(t('pplWithdrawn', { name }));
    onWithdrawn();
  };
  if (waiting.length === 0) return null;
  return (
    <>
      <h3>{t('pplWaiting')}</h3>
      <p class="soft note">{t('pplLinkLost')}</p>
      <ul class="people">
        {waiting.map((one) => (
          <li key={one.id}>
            <b>{one.display_name}</b>
            <span class="soft">{t('pplWaits', { email: one.email, role: t(`role_${one.role}`), time: moment(one.expires_at, zone) })}</span>
            <Button small aria-label={t('pplWithdrawNamed', { name: one.display_name })} onClick={() => void withdraw(one)}>{t('pplWithdraw')}</Button>
          </li>
        ))}
      </ul>
      <FailureLine failure={failure} />
    </>
  );
}

function Requirement({ required, onChanged }: { required: boolean; onChanged: () => void }) {
  const { busy, failure, run } = useWrite();
  const set = async () => {
    if (!(await run(() => confirmed(() => requireSecondFactor(!required))))) return;
    say(t(required ? 'pplNotRequired' : 'pplRequired'));
    onChanged();
  };
  return (
    <section>
      <h2>{t('pplRequireTitle')}</h2>
      <p>{t(required ? 'pplRequired' : 'pplNotRequired')}</p>
      <p class="soft">{t('pplRequireText')}</p>
      <p class="actions"><Button small onClick={() => void set()}>{busy ? t('saving') : t(required ? 'pplNoLonger' : 'pplRequire')}</Button></p>
      <FailureLine failure={failure} />
    </section>
  );
}

function Page() {
  const { data, asOf, failure, reload } = useResource<People>('/practice/people');
  const heading = useRef<HTMLHeadingElement>(null);
  const again = () => void reload();
  const withdrawn = () => {
    again();
    heading.current?.focus(); // the button that had the focus is gone
  };
  return (
    <>
      <ReadFailure failure={failure} asOf={asOf} onRetry={again} />
      {!data && !failure && <p role="status">{t('loading')}</p>}
      {data && (
        <>
          <section>
            <h2 tabIndex={-1} ref={heading}>{t('pplListTitle')}</h2>
            <ul class="people colleagues">{data.items.map((person) => <Person key={person.id} person={person} onChanged={again} />)}</ul>
            <WaitingOnes waiting={data.waiting} onChanged={again} onWithdrawn={withdrawn} />
          </section>
          <section><h2>{t('pplInviteTitle')}</h2><Invite onInvited={again} /></section>
          <Requirement required={data.requires_second_factor} onChanged={again} />
        </>
      )}
    </>
  );
}

/** Who signs in to the practice, for its owners. */
export function PeoplePage() {
  return (
    <main class="form-page account">
      <h1>{t('pplTitle')}</h1>
      <Page />
    </main>
  );
}
