import { ButtonLink } from './form/Button';
import { t } from './words';

export function NotFound() {
  return (
    <main>
      <h1>{t('notFoundTitle')}</h1>
      <p>{t('notFoundText')}</p>
      <p><ButtonLink kind="other" to="/">{t('goToCaseload')}</ButtonLink></p>
    </main>
  );
}
