import { distance, height, mass } from '../../shared/units';
import type { FromFile, LegDemand, Slopes, TripLeg } from '../api/types';
import { t } from '../words';
import type { Frame } from './layProfile';
import { Grades, Profile, Steepest } from './Profile';
import { Remarks } from './Remarks';
import { hours, kcal, legTitle, percent, shown } from './words';

/** The threshold by which ascent is counted; the others show what the choice does. */
const RULE_M = 5;

/** What the smoothing of heights did: ascent by each threshold, in a sentence. */
function Counted({ file }: { file: FromFile }) {
  if (file.counted.length === 0) return <p>{t('trpHeightsUnknown')}</p>;
  const each = file.counted.filter(({ threshold_m }) => threshold_m !== RULE_M).map((one) => t('trpCountedOne', { threshold: one.threshold_m, up: height(one.ascent_m), down: height(one.descent_m) }));
  return <p class="note soft">{t('trpCounted', { threshold: RULE_M, each: each.join('; ') })} {file.points_with_height < file.points && t('trpHeightsSome', { with: shown(file.points_with_height), all: shown(file.points) })}</p>;
}

const NAMES = { lcda: 'trpModel_lcda', pandolf: 'trpModel_pandolf', minetti: 'trpModel_minetti' } as const;

/** Which model answered, for how much of the way, and why. */
function Models({ asked }: { asked: LegDemand }) {
  const { energy } = asked;
  if (!energy) return null;
  const all = Object.values(energy.metres_by_model).reduce((sum, metres) => sum + metres, 0);
  return (
    <ul class="facts note">
      {Object.entries(energy.metres_by_model).map(([model, metres]) => model in NAMES && <li key={model}>{t(NAMES[model as keyof typeof NAMES], { percent: percent((metres / all) * 100) })}</li>)}
      {energy.zigzag_m >= 1 && <li>{t('trpZigzag', { length: height(energy.zigzag_m) })}</li>}
      {energy.unknown_m >= 1 && <li>{t('trpUnknown', { length: distance(energy.unknown_m / 1000) })}</li>}
    </ul>
  );
}

function Asked({ asked }: { asked: LegDemand }) {
  const { energy } = asked;
  return (
    <dl class="asked">
      <div><dt>{t('trpTime')}</dt><dd>{t('trpTimeBoth', { tobler: hours(asked.hours), naismith: hours(asked.hours_by_rule) })}</dd></div>
      <div><dt>{t('trpEnergy')}</dt><dd>{energy ? t('trpBand', { low: kcal(energy.low_kcal), high: kcal(energy.high_kcal), middle: kcal(energy.kcal) }) : t('trpNeedsMass')}</dd></div>
      {energy && <div><dt>{t('trpRate')}</dt><dd>{t('trpRateLine', { mean: shown(energy.mean_met, 1), peak: shown(energy.peak_met, 1) })}{energy.mean_percent_shown !== null && energy.peak_percent_shown !== null && ` ${t('trpShown', { mean: percent(energy.mean_percent_shown), peak: percent(energy.peak_percent_shown) })}`}</dd></div>}
      <div><dt>{t('trpDown')}</dt><dd>{asked.descent_m === null ? t('trpHeightsUnknown') : asked.descent_work_kj === null ? height(asked.descent_m) : t('trpDownLine', { down: height(asked.descent_m), work: shown(asked.descent_work_kj) })}</dd></div>
      <div><dt>{t('trpSteps')}</dt><dd>{t('trpAbout', { value: shown(Math.round(asked.steps / 100) * 100) })}</dd></div>
      <div><dt>{t('trpPack')}</dt><dd>{energy ? t('trpPackShare', { mass: mass(asked.pack_kg), percent: percent(energy.pack_percent) }) : mass(asked.pack_kg)}</dd></div>
    </dl>
  );
}

interface Props { number: number; leg: TripLeg; slopes: Slopes | undefined; asked: LegDemand | undefined; frame: Frame }

/** One leg as it is kept: its profile, its grades, its steepest descents, and what it asks. */
export function LegView({ number, leg, slopes, asked, frame }: Props) {
  const heights = leg.ascent_m === null ? t('trpHeightsUnknown') : t('trpUpDown', { up: height(leg.ascent_m), down: height(leg.descent_m ?? 0) });
  return (
    <section class="leg-view" aria-labelledby={`leg-${number}`}>
      <h3 id={`leg-${number}`}>{legTitle(number, leg)}</h3>
      <p>{t('trpLegLine', { distance: distance(leg.distance_km), heights })}{leg.from_file ? '' : ` ${t('trpTypedLeg')}`}</p>
      {leg.from_file && slopes && <Profile file={leg.from_file} km={leg.distance_km} slopes={slopes} frame={frame} />}
      {asked && <Asked asked={asked} />}
      {asked && <Models asked={asked} />}
      {slopes && slopes.grades.length > 0 && <Grades grades={slopes.grades} />}
      {slopes && <Steepest descents={slopes.steepest_descents} />}
      {leg.from_file && <Counted file={leg.from_file} />}
      {leg.from_file && <Remarks remarks={leg.from_file.remarks} />}
    </section>
  );
}
