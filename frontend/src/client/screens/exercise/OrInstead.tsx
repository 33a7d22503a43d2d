import { doseWords } from '../../../shared/dose';
import { instead, type Prescription } from '../../../shared/program';
import { exerciseName, kitWords, variantName } from '../../parts/names';
import { firstName } from '../../phone';
import { swap } from '../../session/actions';
import { findExercise } from '../../session/library';
import type { Planned } from '../../session/plan';
import { t } from '../../words';

interface OrInsteadProps {
  planned: Planned;
  prescription: Prescription;
  /** What stands in its place now. */
  as: Prescription;
  /** The variant in use. */
  now: string;
}

/** Other movements that the practitioner allows in this one's place, with the way back. Like a rung, each holds for this session. */
export function OrInstead({ planned, prescription, as, now }: OrInsteadProps) {
  const alternatives = prescription.alternatives ?? [];
  if (alternatives.length === 0) return null;
  const isPrescribed = as.exercise === prescription.exercise;
  const take = (one: Prescription) =>
    void swap(planned, prescription.key, now, one.variant, one.exercise === prescription.exercise ? undefined : one.exercise);
  return (
    <>
      <h2 class="sub">{t('insteadTitle')}</h2>
      <p class="note">{isPrescribed ? t('insteadAllowed', { practitioner: firstName.value }) : t('insteadNow', { exercise: exerciseName(planned, prescription) })}</p>
      <ul class="rungs">
        {!isPrescribed && <li><Other planned={planned} one={prescription} reason="" word={t('insteadPrescribed')} back onTake={take} /></li>}
        {alternatives.filter((one) => one.exercise !== as.exercise).map((one) => (
          <li key={one.exercise}><Other planned={planned} one={instead(prescription, one)} reason={one.reason} word={t('insteadWord')} onTake={take} /></li>
        ))}
      </ul>
    </>
  );
}

interface OtherProps {
  planned: Planned;
  one: Prescription;
  reason: string;
  word: string;
  back?: boolean;
  onTake: (one: Prescription) => void;
}

function Other({ planned, one, reason, word, back = false, onTake }: OtherProps) {
  const kit = findExercise(planned.version.exercises, one.exercise)?.ladder.find((rung) => rung.variant === one.variant)?.kit ?? [];
  return (
    <button type="button" class="rung" onClick={() => onTake(one)}>
      <small>{word}</small>
      <span>
        {exerciseName(planned, one)}, {variantName(planned, one, one.variant)}
        <small class="kit">{[doseWords(one), kit.length > 0 ? t('kitNeeded', { kit: kitWords(kit) }) : '', reason].filter(Boolean).join('. ')}</small>
      </span>
      <u>{t(back ? 'swapBack' : 'swap')}</u>
    </button>
  );
}
