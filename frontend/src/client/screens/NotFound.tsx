import { Link } from '../../shared/router';
import { t } from '../words';

export function NotFound() {
  return (
    <main>
      <h1>{t('notFoundTitle')}</h1>
      <p>{t('notFoundText')}</p>
      <Link class="tap" to="/">{t('goToToday')}</Link>
    </main>
  );
}
