import type { Route } from '../../shared/router';
import { t } from '../words';
import { nameToday } from '../parts/names';
import { findPlanned, progressFor } from '../phone';
import { setKey, setsOf } from '../session/progress';
import { AfterPage, OtherWalk } from './AfterPage';
import { Advice } from './care/Advice';
import { How } from './care/How';
import { StopList, StopSign } from './care/Stop';
import { Where } from './care/Where';
import { Exercise } from './Exercise';
import { Health } from './Health';
import { Me } from './Me';
import { NotFound } from './NotFound';
import { Welcome } from './Pair';
import { Practice } from './Practice';
import { Season } from './Season';
import { CatchUpPage } from './season/CatchUpPage';
import { Session } from './Session';
import { Today } from './Today';

function exerciseTitle({ id, prescription, round }: Record<string, string>): string {
  const planned = findPlanned(id ?? '');
  const set = planned && setsOf(planned.session).find((one) => one.key === setKey(prescription ?? '', Number(round)));
  return planned && set ? nameToday(planned, set.prescription, progressFor(planned.planned_id)) : t('notFoundTitle');
}

/** Every page of the phone app. The first that fits is shown. */
export const routes: readonly Route[] = [
  { path: '/', page: Today, title: () => t('today') },
  { path: '/pair', page: Welcome, title: () => t('welcomeTitle') },
  { path: '/do/:id', page: Session, title: ({ id }) => findPlanned(id ?? '')?.session.name ?? t('today') },
  { path: '/do/:id/after', page: AfterPage, title: () => t('finishOpen') },
  { path: '/do/:id/:prescription/:round', page: Exercise, title: exerciseTitle },
  { path: '/hurts', page: Where, title: () => t('whereTitle') },
  { path: '/hurts/how', page: How, title: () => t('strongTitle') },
  { path: '/hurts/advice/:id', page: Advice, title: () => t('itHurts') },
  { path: '/stop', page: StopList, title: () => t('stopTitle') },
  { path: '/stop/:symptom', page: StopSign, title: () => t('stopTitle') },
  { path: '/season', page: Season, title: () => t('season') },
  { path: '/catch-up/:id', page: CatchUpPage, title: () => t('catchTitle') },
  { path: '/practice', page: Practice, title: () => t('practice') },
  { path: '/me', page: Me, title: () => t('me') },
  { path: '/health', page: Health, title: () => t('healthTitle') },
  { path: '/walk', page: OtherWalk, title: () => t('walkEntryTitle') },
];
export const otherwise: Route = { path: '/', page: NotFound, title: () => t('notFoundTitle') };
