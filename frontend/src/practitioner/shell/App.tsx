import { Button } from '../../shared/form/Button';
import { matchPath, Pages, path, type Route } from '../../shared/router';
import { me, session, startSession } from '../api/session';
import { AccountPage } from '../account/AccountPage';
import { JoinPage } from '../people/JoinPage';
import { joining } from '../people/join';
import { Writing } from '../rights/Needs';
import { NotYours } from '../rights/NotYours';
import { mayOpen } from '../rights/rights';
import { otherwise, routes } from '../routes';
import { t } from '../words';
import { Confirm } from './Confirm';
import { Shell } from './Shell';
import { Ended } from './Ended';
import { SignIn } from './SignIn';

function Unreachable() {
  return (
    <main class="sign-in">
      <h1>{t('unreachableTitle')}</h1>
      <p>{t('unreachableText')}</p>
      <Button kind="main" onClick={() => void startSession()}>{t('tryAgain')}</Button>
    </main>
  );
}

const notYours: Route = { path: '/', page: NotYours, title: () => t('notYoursTitle') };

/** The page of the address; one that is closed to whoever is signed in says so. */
function Page() {
  const found = routes.find((route) => matchPath(route.path, path.value));
  const open = !found || mayOpen(path.value);
  return <Writing><Pages routes={open ? routes : []} otherwise={open ? otherwise : notYours} /></Writing>;
}

export function App() {
  const state = session.value;
  if (joining.value) return <JoinPage code={joining.value} />;
  if (state === 'asking') return <main class="sign-in"><p role="status">{t('opening')}</p></main>;
  if (state === 'unreachable') return <Unreachable />;
  if (state === 'out') return <SignIn ended={false} />;
  // When the session has ended the page stays mounted: whatever was typed or opened is there after signing in again.
  return (
    <>
      <Shell key={me.value?.practitioner.id}>
        {me.value?.must_set_up_second_factor ? <AccountPage /> : <Page />}
      </Shell>
      <Confirm />
      {state === 'ended' && <Ended />}
    </>
  );
}
