import type { Prescription } from '../../../shared/program';
import { mass } from '../../../shared/units';
import { kitWords } from '../../parts/names';
import type { Exercise, Variant } from '../../session/library';
import { t } from '../../words';
import { Drawing } from './Drawing';

/** The movement's plate: its drawing, its name and how it is done, step by step. */
export function Plate({ exercise, variant, note }: { exercise: Exercise | null; variant: Variant | null; note: string }) {
  return (
    <div class="plate">
      <div>
        {exercise && variant && <Drawing key={`${exercise.code}/${variant.variant}`} exercise={exercise} variant={variant} />}
        <p class="plate-name"><b>{variant?.name ?? t('noLadder')}</b></p>
        {variant && <ol class="how" aria-label={t('howTo')}>{variant.how.map((step) => <li key={step}>{step}</li>)}</ol>}
        {variant && variant.kit.length > 0 && <p class="note soft">{t('kitNeeded', { kit: kitWords(variant.kit) })}</p>}
        {note && <p class="note">{note}</p>}
      </div>
    </div>
  );
}

function amount(dose: Prescription): string {
  if (dose.hold_s !== null) return t('secondsShort', { n: dose.hold_s });
  const [low, high] = [dose.reps_low ?? 0, dose.reps_high ?? dose.reps_low ?? 0];
  return low === high ? String(low) : `${low}–${high}`;
}

/** At most three cells: how much, how (weight or way down), and the rest. */
function cells(dose: Prescription): [string, string][] {
  const side = t(dose.sides === 'each' ? 'doseEach' : dose.hold_s === null ? 'doseTimes' : 'doseHold');
  const how: [string, string] | null = dose.load_kg
    ? [t('doseLoad'), mass(dose.load_kg)]
    : dose.tempo_down_s ? [t('doseDown'), t('secondsShort', { n: dose.tempo_down_s })] : null;
  const rest = dose.rest_s ? t('secondsShort', { n: dose.rest_s }) : t('noRest');
  return [[side, amount(dose)], ...(how ? [how] : []), [t('doseRest'), rest]];
}

export function Dose({ dose }: { dose: Prescription }) {
  return (
    <>
      <p class="note">{dose.sides === 'each' ? t('sidesEach', { first: t('right'), second: t('left') }) : t('sidesBoth')}</p>
      <dl class="dose">
        {cells(dose).map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {dose.load_kg && dose.tempo_down_s ? <p class="note">{t('doseDown')}: {t('secondsShort', { n: dose.tempo_down_s })}</p> : null}
    </>
  );
}

/** What to think of, what may go wrong, what to take care of. */
export function Texts({ exercise }: { exercise: Exercise | null }) {
  if (!exercise) return null;
  return (
    <>
      <h2 class="sub">{t('cautionsTitle')}</h2>
      <ul class="cues">{exercise.cautions.map((text) => <li key={text}>{text}</li>)}</ul>
      <h2 class="sub">{t('faultsTitle')}</h2>
      <ul class="faults">
        {exercise.faults.map(({ see, instead }) => (
          <li key={see}>{t('faultSee')} <i>{see}</i> {t('faultThen')} <b>{instead}</b></li>
        ))}
      </ul>
      <h2 class="sub">{t('whyTitle')}</h2>
      <p>{exercise.why}</p>
    </>
  );
}

export const Cues = ({ exercise }: { exercise: Exercise | null }) =>
  exercise && <ul class="cues" aria-label={t('cuesTitle')}>{exercise.cues.map((cue) => <li key={cue}>{cue}</li>)}</ul>;
