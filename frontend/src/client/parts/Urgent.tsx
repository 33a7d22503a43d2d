import { Link } from '../../shared/router';
import { t } from '../words';
import { emergencyText } from './practiceWords';

/** Above everything wherever pain or symptoms are entered. */
export function RedFlags() {
  return (
    <p class="urgent">
      <b>{t('redFlags')}</b> {t('redFlagsDo')} <Link class="tap" to="/stop">{t('allSigns')}</Link>
    </p>
  );
}

/** What the practice says about emergencies, in its own words. */
export function EmergencyText() {
  const text = emergencyText();
  return text ? <p class="urgent"><b>{t('emergencyFrom')}</b> {text}</p> : null;
}

export const UrgentLine = () => <p class="note centered foot-note">{t('urgentLine')}</p>;
