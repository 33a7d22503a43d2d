import type { Route } from '../shared/router';
import { AccountPage } from './account/AccountPage';
import { CaseloadPage } from './caseload/CaseloadPage';
import { ClientsPage } from './clients/ClientsPage';
import { EditClientPage } from './clients/EditClientPage';
import { NewClientPage } from './clients/NewClientPage';
import { PhonesPage } from './clients/PhonesPage';
import { custodyRoutes } from './custody/routes';
import { editorRoutes } from './editor/routes';
import { NotFound } from './NotFound';
import { PeoplePage } from './people/PeoplePage';
import { ClientWordsPage } from './practice/ClientWordsPage';
import { PersonPage } from './person/PersonPage';
import { InstallationPage } from './installation/InstallationPage';
import { LoadPage } from './load/LoadPage';
import { ReadinessPage } from './readiness/ReadinessPage';
import { SeasonPage } from './season/SeasonPage';
import { ScreeningPage } from './screening/ScreeningPage';
import { SourcesPage } from './sources/SourcesPage';
import { TestsPage } from './assessment/TestsPage';
import { TripPage } from './trip/TripPage';
import { t } from './words';

/** Every page of the desk. The first that fits is shown. */
export const routes: readonly Route[] = [
  { path: '/', page: CaseloadPage, title: () => t('caseload') },
  { path: '/clients', page: ClientsPage, title: () => t('clientsTitle') },
  { path: '/clients/new', page: NewClientPage, title: () => t('newClientTitle') },
  { path: '/clients/:id', page: PersonPage, title: () => t('personTitle') },
  { path: '/clients/:id/edit', page: EditClientPage, title: () => t('editLink') },
  { path: '/clients/:id/phones', page: PhonesPage, title: () => t('phonesLink') },
  { path: '/clients/:id/screening', page: ScreeningPage, title: () => t('scrTitle') },
  { path: '/clients/:id/load', page: LoadPage, title: () => t('loadTitle') },
  { path: '/clients/:id/readiness', page: ReadinessPage, title: () => t('rdyTitle') },
  { path: '/clients/:id/season', page: SeasonPage, title: () => t('seaTitle') },
  { path: '/account', page: AccountPage, title: () => t('accTitle') },
  { path: '/practice/people', page: PeoplePage, title: () => t('pplTitle') },
  { path: '/practice/words', page: ClientWordsPage, title: () => t('wrdTitle') },
  { path: '/sources', page: SourcesPage, title: () => t('sourcesTitle') },
  { path: '/clients/:id/tests', page: TestsPage, title: () => t('tstTitle') },
  { path: '/clients/:id/trip', page: TripPage, title: () => t('trpTitle') },
  { path: '/practice/status', page: InstallationPage, title: () => t('insTitle') },
  ...custodyRoutes,
  ...editorRoutes,
];
export const otherwise: Route = { path: '/', page: NotFound, title: () => t('notFoundTitle') };
