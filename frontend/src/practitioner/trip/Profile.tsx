import { distance, height } from '../../shared/units';
import type { FromFile, Slopes } from '../api/types';
import { t } from '../words';
import { layProfile, type Frame } from './layProfile';

const LETTERS = 'abc';
/** Letters of descents that lie together stand above each other, px. */
const LETTER_PX = 14;
const TOP_PX = 24;
const FOOT_PX = 24;
/** Left of the picture, px: the heights are written there. */
const LEFT_PX = 68;

/** The profile in words: where it is highest and lowest, and what is not known. */
export function profileWords(file: FromFile, km: number): string {
  if (file.highest_m === null || file.lowest_m === null) return t('trpProfileNone', { distance: distance(km) });
  const first = file.stretches.find(({ height_m }) => height_m !== null)?.height_m ?? file.lowest_m;
  const last = file.stretches.filter(({ height_m }) => height_m !== null).at(-1);
  const end = (last?.height_m ?? 0) + (last?.rise_m ?? 0);
  return t('trpProfileAlt', { distance: distance(km), first: height(first), last: height(end), high: height(file.highest_m), low: height(file.lowest_m) });
}

/** The way from the side. All legs share one scale; the steepest descents bear the letters of the list below. */
export function Profile({ file, km, slopes, frame }: { file: FromFile; km: number; slopes: Slopes; frame: Frame }) {
  const { lines, areas, steep, unknown, end } = layProfile(file.stretches, slopes.steepest_descents, frame);
  const ground = frame.height;
  return (
    <svg class="profile" viewBox={`${-LEFT_PX} ${-TOP_PX} ${frame.width + LEFT_PX + 12} ${frame.height + TOP_PX + FOOT_PX}`} role="img" aria-label={profileWords(file, km)}>
      {areas.map((path) => <path key={path} class="area" d={path} />)}
      {lines.map((path) => <path key={path} class="way" d={path} />)}
      {unknown.map(([from, to]) => <path key={from} class="unknown" d={`M${from} ${ground}H${to}`} />)}
      {steep.map(({ path, x, y }, i) => <g key={path} class="steep"><path d={path} /><text x={x} y={y - 8 - i * LETTER_PX}>{LETTERS[i]}</text></g>)}
      <path class="ground" d={`M0 ${ground}H${end}`} />
      {file.highest_m !== null && <text class="at" x="-8" y="5">{height(frame.highM)}</text>}
      {file.lowest_m !== null && <text class="at" x="-8" y={ground}>{height(frame.lowM)}</text>}
      <text x={end} y={ground + 18} class="at">{distance(km)}</text>
    </svg>
  );
}

/** How far at which grade: bars, with the same in words beside each. */
export function Grades({ grades }: { grades: Slopes['grades'] }) {
  const most = Math.max(...grades.map(({ distance_km }) => distance_km), 0.001);
  const words = ({ from_percent: from, to_percent: to }: Slopes['grades'][number]) =>
    from === null ? t('trpGradeBelow', { to: to ?? 0 }) : to === null ? t('trpGradeAbove', { from }) : t('trpGradeBetween', { from, to });
  return (
    <table class="plain grades">
      <caption>{t('trpGrades')}</caption>
      <thead><tr><th scope="col">{t('trpGrade')}</th><th scope="col">{t('trpGradeLength')}</th></tr></thead>
      <tbody>
        {grades.filter(({ distance_km }) => distance_km > 0).map((one) => (
          <tr key={words(one)}>
            <th scope="row">{words(one)}</th>
            <td class="tnum"><svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true"><rect width={(one.distance_km / most) * 100} height="10" /></svg> {distance(one.distance_km)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export function Steepest({ descents }: { descents: Slopes['steepest_descents'] }) {
  if (descents.length === 0) return null;
  return (
    <>
      <h4>{t('trpSteepest')}</h4>
      <ul class="facts">
        {descents.map((one, i) => <li key={one.from_km}>{t('trpSteepestLine', { letter: LETTERS[i] ?? '', place: distance(one.from_km), down: height(one.descent_m), length: height(one.length_m), grade: Math.round(-one.grade_percent) })}</li>)}
      </ul>
    </>
  );
}
