import type { Route } from '../../shared/router';
import { t } from '../words';
import { AfterPage, OtherWalk } from './AfterPage';
import { Exercise } from './Exercise';
import { NotFound } from './NotFound';
import { Welcome } from './Pair';
import { Session } from './Session';
import { Today } from './Today';

/** Every page of the phone app. The first that fits is shown. */
export const routes: readonly Route[] = [
  { path: '/', page: Today, title: () => t('today') },
  { path: '/pair', page: Welcome, title: () => t('welcomeTitle') },
  { path: '/do/:id', page: Session, title: () => t('today') },
  { path: '/do/:id/after', page: AfterPage, title: () => t('finishOpen') },
  { path: '/do/:id/:prescription/:round', page: Exercise, title: () => t('howTo') },
  { path: '/walk', page: OtherWalk, title: () => t('walkEntryTitle') },
];
export const otherwise: Route = { path: '/', page: NotFound, title: () => t('notFoundTitle') };
