import { kitWords } from '../../parts/names';
import { firstName } from '../../phone';
import { swap } from '../../session/actions';
import { rungsAround, type Exercise, type Variant } from '../../session/library';
import type { Planned } from '../../session/plan';
import type { Prescription } from '../../../shared/program';
import { t } from '../../words';

interface RungsProps {
  planned: Planned;
  prescription: Prescription;
  exercise: Exercise | null;
  /** It is done instead of the prescribed movement. */
  instead: boolean;
  /** The variant in use. */
  now: string;
}

/** The ladder around today's variant: harder above, easier below, as on a slope. A swap asks nothing and holds for this session. */
export function Rungs({ planned, prescription, instead, exercise, now }: RungsProps) {
  const rungs = rungsAround(exercise, now);
  if (!rungs.now) return null;
  const take = (to: Variant) => void swap(planned, prescription.key, now, to.variant, instead ? prescription.exercise : undefined);
  const row = (rung: Variant | null, word: 'harder' | 'easier') =>
    rung ? <Rung rung={rung} word={t(word)} back={rung.variant === prescription.variant} onTake={() => take(rung)} /> : <p class="note soft">{t(word === 'harder' ? 'hardest' : 'easiest')}</p>;
  return (
    <>
      <h2 class="sub">{t('rungsTitle')}</h2>
      <ol class="rungs">
        <li>{row(rungs.harder, 'harder')}</li>
        <li>
          <div class="rung now" aria-current="true">
            <small>{t('rungNow')}</small>
            <b>{rungs.now.name}</b>
            <small>{now === prescription.variant ? t('choseIt', { practitioner: firstName.value }) : t('youChose')}</small>
          </div>
        </li>
        <li>{row(rungs.easier, 'easier')}</li>
      </ol>
    </>
  );
}

function Rung({ rung, word, back, onTake }: { rung: Variant; word: string; back: boolean; onTake: () => void }) {
  return (
    <button type="button" class="rung" onClick={onTake}>
      <small>{word}</small>
      <span>
        {rung.name}
        {rung.kit.length > 0 && <small class="kit">{t('kitNeeded', { kit: kitWords(rung.kit) })}</small>}
      </span>
      <u>{t(back ? 'swapBack' : 'swap')}</u>
    </button>
  );
}
