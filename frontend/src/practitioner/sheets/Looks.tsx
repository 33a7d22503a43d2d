import { Button } from '../form/Button';
import { Choices } from '../form/Choices';
import { FailureLine } from '../parts/status';
import { t } from '../words';
import type { Look } from './sheet';
import type { useMaking } from './useMaking';

/** Paper, size of print and language: the same for every sheet. */
export function Looks({ look, onChange }: { look: Look; onChange: (look: Look) => void }) {
  return (
    <>
      <Choices legend={t('sheetSize')} value={look.large ? 'large' : 'usual'} onChange={(size) => onChange({ ...look, large: size === 'large' })}
        options={[{ value: 'usual', label: t('sheetUsual') }, { value: 'large', label: t('sheetLarge') }]} />
      <Choices legend={t('sheetPaper')} value={look.paper} onChange={(paper) => onChange({ ...look, paper })}
        options={[{ value: 'a4', label: t('sheetA4') }, { value: 'letter', label: t('sheetLetter') }]} />
      <Choices legend={t('sheetLanguage')} value={look.language} onChange={(language) => onChange({ ...look, language })}
        options={[{ value: 'en', label: t('sheetEnglish') }, { value: 'de', label: t('sheetGerman') }]} />
      {look.language !== 'en' && <p class="soft">{t('sheetLanguageHint')}</p>}
    </>
  );
}

/** The end of a sheet's dialog: make it, hear what became of it, close. */
export function Making({ making, onClose }: { making: ReturnType<typeof useMaking>; onClose: () => void }) {
  const { busy, failure, made } = making;
  return (
    <>
      <p role="status">{busy ? t('sheetMaking') : made ? t('sheetReady', { name: made.name }) : ''}</p>
      {made && <p><a href={made.url} download={made.name}>{t('sheetSaveAgain')}</a></p>}
      <FailureLine failure={failure} />
      <div class="foot">
        <Button kind="main" small type="submit">{busy ? t('sheetMaking') : t('sheetMake')}</Button>
        <Button small onClick={onClose}>{t('close')}</Button>
      </div>
    </>
  );
}
