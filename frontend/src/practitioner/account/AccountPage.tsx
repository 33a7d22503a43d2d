import { useState } from 'preact/hooks';
import { renewRecoveryCodes, type Account } from '../api/account';
import { refreshAll, useResource } from '../api/resource';
import { me, refreshMe } from '../api/session';
import { Button } from '../form/Button';
import { ReadFailure } from '../parts/status';
import { Looking } from '../rights/Needs';
import { t } from '../words';
import { Ask } from './Ask';
import { Passkeys } from './Passkeys';
import { Password } from './Password';
import { RecoveryCodes } from './RecoveryCodes';
import { Sessions } from './Sessions';
import { Totp } from './Totp';

function Recovery({ account, onCodes }: { account: Account; onCodes: (codes: string[]) => void }) {
  const [asking, setAsking] = useState(false);
  const has = account.totp_since !== null || account.passkeys.length > 0;
  return (
    <>
      <h3>{t('recTitle')}</h3>
      <p class="soft">{t('recText')}</p>
      <p>{has ? t('recLeft', { n: account.recovery_codes_left }) : t('recNone')}</p>
      {has && <p class="actions"><Button small onClick={() => setAsking(true)}>{t('recRenew')}</Button></p>}
      <Ask open={asking} title={t('recRenewTitle')} button={t('recRenew')} onClose={() => setAsking(false)}
        write={renewRecoveryCodes} onDone={onCodes}>{t('recRenewText')}</Ask>
    </>
  );
}

function SecondFactor({ account }: { account: Account }) {
  const [codes, setCodes] = useState<string[]>([]);
  const settle = () => {
    setCodes([]);
    refreshAll();
    void refreshMe();
  };
  const changed = (fresh: string[]) => {
    if (fresh.length === 0) return settle();
    setCodes(fresh);
    refreshAll();
  };
  const none = account.totp_since === null && account.passkeys.length === 0;
  return (
    <section>
      <h2>{t('accFactorTitle')}</h2>
      <p>{t('accFactorText')} {none && t('accFactorNone')}</p>
      {codes.length > 0 && <RecoveryCodes codes={codes} onKept={settle} />}
      <Totp account={account} onChanged={changed} />
      <Passkeys account={account} onChanged={changed} />
      <Recovery account={account} onCodes={changed} />
    </section>
  );
}

/** How one signs in, and where one is signed in: everyone's own, whatever they may do else. */
export function AccountPage() {
  const { data: account, asOf, failure, reload } = useResource<Account>('/account');
  return (
    <Looking><main class="form-page account">
      <h1>{t('accTitle')}</h1>
      {me.value?.must_set_up_second_factor && <p class="banner" role="status">{t('accMustSetUp')}</p>}
      <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} />
      {!account && !failure && <p role="status">{t('loading')}</p>}
      {account && <p>{t('accWho', { name: account.display_name, email: account.email, role: t(`role_${account.role}`) })}</p>}
      {account && <SecondFactor account={account} />}
      <section><h2>{t('pwTitle')}</h2><Password /></section>
      <section><h2>{t('sesTitle')}</h2><Sessions /></section>
    </main></Looking>
  );
}
