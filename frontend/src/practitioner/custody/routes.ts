import type { Route } from '../../shared/router';
import { AuditPage } from './AuditPage';
import { RecordPage } from './RecordPage';
import { RetentionPage } from './RetentionPage';
import { c } from './words';

/** The log, the record as a whole, how long it is kept. */
export const custodyRoutes: readonly Route[] = [
  { path: '/practice/audit', page: AuditPage, title: () => c('auditTitle') },
  { path: '/practice/records', page: RetentionPage, title: () => c('retTitle') },
  { path: '/clients/:id/record', page: RecordPage, title: () => c('recordTitle') },
];
