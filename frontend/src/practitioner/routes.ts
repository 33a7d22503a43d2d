import type { Route } from '../shared/router';
import { t } from './words';
import { NotFound } from './NotFound';

/** Every page of the desk. The first that fits is shown. */
export const routes: readonly Route[] = [];
export const otherwise: Route = { path: '/', page: NotFound, title: () => t('notFoundTitle') };
