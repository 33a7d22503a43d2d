import { Choices, Several } from '../../../shared/form/Choices';
import { setTheme, theme, type Theme } from '../../../shared/theme';
import { setUnitSystem, unitSystem, type UnitSystem } from '../../../shared/units';
import { language, LANGUAGES, setLanguage, type Language } from '../../../shared/words/mechanism';
import { straightList, timerSound, timerVibration } from '../../prefs';
import { t } from '../../words';

const languages = (Object.keys(LANGUAGES) as Language[]).map((value) => ({ value, label: LANGUAGES[value] }));
const units = (): { value: UnitSystem; label: string }[] => [{ value: 'metric', label: t('unitsMetric') }, { value: 'us', label: t('unitsUs') }];
const themes = (): { value: Theme; label: string }[] => [
  { value: 'system', label: t('themeSystem') }, { value: 'light', label: t('themeLight') }, { value: 'dark', label: t('themeDark') },
];

function Alerts() {
  const on = [timerSound.value && 'sound', timerVibration.value && 'vibration'].filter((one): one is 'sound' | 'vibration' => one !== false);
  const change = (chosen: readonly string[]) => {
    timerSound.value = chosen.includes('sound');
    timerVibration.value = chosen.includes('vibration');
  };
  const options = [{ value: 'sound', label: t('alertSound') }, { value: 'vibration', label: t('alertVibration') }] as const;
  return <Several legend={t('alertsLabel')} options={options} value={on} onChange={change} />;
}

/** Choices that belong to this phone. Each holds from the tap on. */
export function Looks() {
  const path = straightList.value ? 'straight' : 'turning';
  return (
    <section class="block questions">
      <h2>{t('howShown')}</h2>
      <Choices legend={t('languageLabel')} options={languages} value={language.value} onChange={(to) => void setLanguage(to)} />
      <Choices legend={t('unitsLabel')} options={units()} value={unitSystem.value} onChange={setUnitSystem} />
      <Choices legend={t('themeLabel')} options={themes()} value={theme.value} onChange={setTheme} />
      <Choices legend={t('pathLabel')} options={[{ value: 'turning', label: t('pathTurning') }, { value: 'straight', label: t('pathStraight') }]} value={path} onChange={(to) => (straightList.value = to === 'straight')} />
      <Alerts />
    </section>
  );
}
