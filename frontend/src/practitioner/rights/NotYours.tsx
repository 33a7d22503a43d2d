import { path } from '../../shared/router';
import { Link } from '../form/Link';
import { t } from '../words';
import { neededBy } from './rights';

/** In place of a page that the person may do nothing on. */
export function NotYours() {
  return (
    <main class="form-page">
      <h1>{t('notYoursTitle')}</h1>
      <p>{t(neededBy(path.value) === 'own' ? 'notYoursOwner' : 'notYoursWriter')}</p>
      <p><Link to="/">{t('caseload')}</Link></p>
    </main>
  );
}
