import { useEffect, useRef } from 'preact/hooks';
import { Button } from '../../shared/form/Button';
import { Select } from '../../shared/form/Field';
import { Link } from '../form/Link';
import { setTheme, theme } from '../../shared/theme';
import { setUnitSystem, unitSystem } from '../../shared/units';
import { LANGUAGES, language, setLanguage, type Language } from '../../shared/words/mechanism';
import { me, signOut } from '../api/session';
import { c } from '../custody/words';
import { say } from '../parts/status';
import { t } from '../words';

const languages = Object.entries(LANGUAGES).map(([value, label]) => ({ value: value as Language, label }));

async function leave(): Promise<void> {
  if (await signOut()) say(t('signOutFailed'));
}

function useClosing() {
  const element = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    const close = (event: Event) => {
      const open = element.current;
      if (!open?.open) return;
      const escaped = event instanceof KeyboardEvent && event.key === 'Escape';
      if (escaped) open.querySelector('summary')?.focus();
      if (escaped || (event.type === 'click' && !open.contains(event.target as Node))) open.open = false;
    };
    document.addEventListener('keydown', close);
    document.addEventListener('click', close);
    return () => {
      document.removeEventListener('keydown', close);
      document.removeEventListener('click', close);
    };
  }, []);
  return element;
}

/** `onGo`: a link changes the page, not the menu. */
function MenuLinks({ onGo }: { onGo: () => void }) {
  return (
    <p class="menu-links" onClick={onGo}>
      <Link to="/account">{t('accTitle')}</Link>
      <Link to="/practice/people">{t('pplTitle')}</Link>
      <Link to="/practice/words">{t('wrdTitle')}</Link>
      <Link to="/practice/audit">{c('auditTitle')}</Link>
      <Link to="/practice/records">{c('retTitle')}</Link>
      <Link to="/practice/status">{t('insTitle')}</Link>
    </p>
  );
}

/** Language, light, units, one's account and the way out. */
export function Menu() {
  const element = useClosing();
  return (
    <details class="menu" ref={element}>
      <summary>{me.value?.practitioner.display_name ?? t('menuSettings')}</summary>
      <div class="menu-sheet">
        <Select label={t('languageLabel')} value={language.value} options={languages} onChange={(to) => void setLanguage(to)} />
        <Select label={t('themeLabel')} value={theme.value} onChange={setTheme}
          options={[{ value: 'system', label: t('themeSystem') }, { value: 'light', label: t('themeLight') }, { value: 'dark', label: t('themeDark') }]} />
        <Select label={t('unitsLabel')} value={unitSystem.value} onChange={setUnitSystem}
          options={[{ value: 'metric', label: t('unitsMetric') }, { value: 'us', label: t('unitsUs') }]} />
        {me.value && !me.value.must_set_up_second_factor && <MenuLinks onGo={() => element.current && (element.current.open = false)} />}
        {me.value && <Button small onClick={() => void leave()}>{t('signOut')}</Button>}
      </div>
    </details>
  );
}
