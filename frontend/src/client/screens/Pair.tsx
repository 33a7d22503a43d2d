import { useState } from 'preact/hooks';
import { connection, device, gone, sendNow, samePerson, type Device } from '../../outbox';
import { Dialog } from '../../shared/Dialog';
import { Button } from '../../shared/form/Button';
import { navigate } from '../../shared/router';
import { BackLink, Screen } from '../parts/Screen';
import { sharedWaits } from '../walkfile/shared';
import { t } from '../words';
import { CodeForm, failureWords } from './pair/CodeForm';
import { isIos } from './pair/install';
import { InstallHint, SharedWalk, StorageTrouble, WhatItIs } from './pair/parts';
import { accept, linkCode, pairAnew, pairingAnew, pending, putAway } from './pair/pending';

const who = ({ client_name, practice_name, practitioner_name }: Device) => ({ client: client_name, practice: practice_name, practitioner: practitioner_name });

/** The first page of a phone without a practice, and of one that shall be paired anew. */
export function Welcome() {
  const known = device.value;
  const link = linkCode.value;
  const [declined, setDeclined] = useState(false);
  if (pending.value) return <Confirm fresh={pending.value} onDeclined={() => setDeclined(true)} />;
  if (known && !pairingAnew.value) return <Already known={known} />;
  return (
    <Screen title={t(link ? 'linkTitle' : 'welcomeTitle')} where={known ? <BackLink to="/me">{t('me')}</BackLink> : undefined}>
      <p role="status">{declined && t('pairDeclined')}</p>
      <SharedWalk />
      <Gone />
      {isIos() && <InstallHint />}
      <div class="stack"><p>{t(link ? 'linkText' : 'welcomeText')}</p>{link && <p>{t('linkNext')}</p>}</div>
      <CodeForm key={link} link={link} />
      <StorageTrouble />
      {!isIos() && <InstallHint />}
      <WhatItIs />
    </Screen>
  );
}

/** The browser cleared what this phone had: said, since it would look like a first visit. */
function Gone() {
  const left = gone.value;
  if (!left) return null;
  return (
    <section class="sheet" role="status">
      <p>{t('goneText', { practice: left.practice })}</p>
      {left.unsent > 0 && <p><b class="call">{t('goneUnsent', { n: left.unsent })}</b></p>}
    </section>
  );
}

/** Who the practice is, before anything is joined. */
function Confirm({ fresh, onDeclined }: { fresh: Device; onDeclined: () => void }) {
  const known = device.value;
  const [problem, setProblem] = useState<string | null>(null);
  const yes = () => accept().then(() => navigate(sharedWaits.value ? '/walk' : '/', { replace: true }), (error: unknown) => setProblem(failureWords(error)));
  const [sure, setSure] = useState(false);
  const no = () => putAway().then(onDeclined);
  return (
    <Screen
      title={t('pairWith')}
      foot={<div class="stack"><Button kind="main" wide onClick={() => void yes()}>{t('pairAccept')}</Button><Button wide onClick={() => setSure(true)}>{t('pairDecline')}</Button></div>}
    >
      <p class="who">{t('pairWho', who(fresh))}</p>
      {known && !samePerson(known, fresh) && <p class="urgent">{t('alreadyOther', { client: who(known).client })}</p>}
      <p class="trouble" role="alert">{problem}</p>
      <StorageTrouble />
      <WhatItIs />
      <Dialog open={sure} title={t('pairSure')} onClose={() => setSure(false)}>
        <p>{t('pairSureText')}</p>
        <div class="foot"><Button kind="main" onClick={() => setSure(false)}>{t('pairSureNo')}</Button><Button onClick={() => void no()}>{t('pairSureYes')}</Button></div>
      </Dialog>
    </Screen>
  );
}

/** A pairing link was opened on a paired phone, or the person asked for it: nothing happens by itself. */
function Already({ known }: { known: Device }) {
  const keep = () => putAway().then(() => navigate('/', { replace: true }));
  return (
    <Screen
      title={t('alreadyTitle')}
      foot={<div class="stack"><Button kind="main" wide onClick={() => void keep()}>{t('alreadyKeep')}</Button><Button wide onClick={pairAnew}>{t('alreadyGo')}</Button></div>}
    >
      <p>{t('alreadyText', who(known))}</p>
      <p>{t('alreadyOther', who(known))}</p>
    </Screen>
  );
}

/** The practice did not let this phone in; another code may. */
const Refused = () => (
  <Screen title={t('removedTitle')}>
    <p role="status">{t('strangerText')}</p>
    <div class="block"><Button kind="main" wide onClick={pairAnew}>{t('alreadyGo')}</Button></div>
    <WhatItIs />
  </Screen>
);

/** Invited by a link: the practice compares four digits before this phone is let in. */
export function Waiting() {
  const known = device.value;
  const [looked, setLooked] = useState(false);
  if (!known) return null;
  if (connection.value === 'revoked') return <Refused />;
  const look = async () => {
    await sendNow();
    setLooked(true);
  };
  return (
    <Screen title={t('waitTitle', { practitioner: who(known).practitioner })}>
      <SharedWalk />
      <p class="check-number">{known.check_number}</p>
      <p>{t('waitText', { practice: who(known).practice })}</p>
      <p class="note">{t('waitWhy')}</p>
      <div class="block"><Button wide onClick={() => void look()}>{t('waitCheck')}</Button></div>
      <p role="status">{looked && connection.value === 'waiting' && t('waitStill')}</p>
      <WhatItIs />
    </Screen>
  );
}
