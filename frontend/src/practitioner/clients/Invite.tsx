import { useEffect, useRef, useState } from 'preact/hooks';
import { invite } from '../api/calls';
import type { Invitation } from '../api/types';
import { Button } from '../form/Button';
import { Input } from '../form/bare';
import { moment } from '../parts/heard';
import { FailureLine } from '../parts/status';
import { useCopy } from '../parts/useCopy';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';

interface Person { id: string; display_name: string; time_zone: string }

/** Whole seconds from `now` until `end`, never below 0. */
export const secondsLeft = (end: string, now: Date): number => Math.max(0, Math.ceil((Date.parse(end) - now.getTime()) / 1000));

function useSecondsLeft(end: string): number {
  const [left, setLeft] = useState(secondsLeft(end, new Date()));
  useEffect(() => {
    // From the end time at each tick: a sleeping laptop must not stretch ten minutes.
    const ticking = setInterval(() => setLeft(secondsLeft(end, new Date())), 1000);
    return () => clearInterval(ticking);
  }, [end]);
  return left;
}

function InPerson({ invitation, person }: { invitation: Invitation; person: Person }) {
  const left = useSecondsLeft(invitation.expires_at);
  if (left === 0) return <p role="alert">{t('codeOver')}</p>;
  const seconds = String(left % 60).padStart(2, '0');
  return (
    <>
      <p>{t('codeScan')}</p>
      <img class="qr" alt={t('codeQr')} src={`data:image/svg+xml,${encodeURIComponent(invitation.qr_svg)}`} />
      <p>{t('codeOr', { url: new URL(invitation.url).origin + new URL(invitation.url).pathname })}</p>
      <p class="code tnum">{invitation.code}</p>
      <p>{t('codeOnce')} {t('codeUntil', { time: moment(invitation.expires_at, person.time_zone) })} <span class="tnum" role="timer">{t('codeLeft', { minutes: Math.floor(left / 60), seconds })}</span></p>
    </>
  );
}

function ByLink({ invitation, person }: { invitation: Invitation; person: Person }) {
  const field = useRef<HTMLInputElement>(null);
  const { told, copy } = useCopy(invitation.url, { copied: t('linkCopied'), refused: t('linkCopyFailed') }, () => field.current?.select());
  return (
    <>
      <div class="field"><label for="invitation-link">{t('linkLabel', { name: person.display_name })}</label><Input id="invitation-link" readOnly ref={field} value={invitation.url} /></div>
      <p class="actions"><Button kind="main" small onClick={() => void copy()}>{t('linkCopy')}</Button> <span role="status">{told}</span></p>
      <p>{t('codeOnce')} {t('codeUntil', { time: moment(invitation.expires_at, person.time_zone) })}</p>
      <p>{t('linkNext')}</p>
    </>
  );
}

/** Makes a code for one phone, and shows it once. `onMade` with null when it is no longer shown. */
export function Invite({ person }: { person: Person }) {
  const [made, setMade] = useState<Invitation | null>(null);
  const { busy, failure, run } = useWrite();
  const heading = useRef<HTMLHeadingElement>(null);
  const make = async (delivery: Invitation['delivery']) => {
    const invitation = await run(() => invite(person.id, delivery));
    if (invitation) setMade(invitation);
  };
  useEffect(() => {
    if (made) heading.current?.focus();
  }, [made]);
  if (made) {
    return (
      <section class="invitation">
        <h2 tabIndex={-1} ref={heading}>{t('codeTitle', { name: person.display_name })}</h2>
        {made.delivery === 'in_person' ? <InPerson key={made.id} invitation={made} person={person} /> : <ByLink key={made.id} invitation={made} person={person} />}
        <p class="actions"><Button small onClick={() => void make(made.delivery)}>{t('codeNew')}</Button> <Button small kind="quiet" onClick={() => setMade(null)}>{t('close')}</Button></p>
        <FailureLine failure={failure} />
      </section>
    );
  }
  return (
    <section>
      <h2>{t('inviteTitle')}</h2>
      <div class="ways">
        <div><Button kind="main" small onClick={() => void make('in_person')}>{t('inviteInPerson')}</Button><p class="soft">{t('inviteInPersonText')}</p></div>
        <div><Button small onClick={() => void make('link')}>{t('inviteByLink')}</Button><p class="soft">{t('inviteByLinkText')}</p></div>
      </div>
      <p role="status">{busy ? t('inviteMaking') : ''}</p>
      <FailureLine failure={failure} />
    </section>
  );
}
