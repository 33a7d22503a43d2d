/**
 * The season as a mountain ridge. Pure: weeks and times in, points out. The outline is the planned weekly load
 * (effort 0 to 10 times minutes, summed), the fill is what was done and heard.
 */
import { addDays, daysBetween, isoWeek, type LocalDate } from '../dates';

export interface RidgeWeek {
  starts_on: LocalDate;
  planned_load: number;
  done_load: number;
  heard: 'all' | 'part' | 'none';
  /** Running week only: how much of its planned load was due so far, more than 0 to 1; null while nothing is due. */
  due_share: number | null;
}
export interface RidgeInput {
  weeks: readonly RidgeWeek[];
  today: LocalDate;
  /** Share of today that has passed, 0 to 1. */
  dayShare?: number;
  /** Last day heard; the cut lies at `heardShare` (0 to 1) of it. Null: nothing was ever heard. */
  heardUntil: LocalDate | null;
  heardShare?: number;
  /** Further spans, both days included, that no phone reported. */
  unheard?: readonly { from: LocalDate; to: LocalDate }[];
  /** Picture size in px: where the ground and the highest summit may lie, and where the ridge meets the ground. */
  width: number;
  base: number;
  top: number;
}
export type Point = readonly [x: number, y: number];
export interface RidgePicture {
  /** Two crags between two summits; passes exactly through each week's planned load at the week's middle. */
  outline: Point[];
  /** One closed shape for each heard stretch. */
  fills: Point[][];
  /** Ground that nobody has reported, under the outline. */
  dotted: Point[][];
  strata: Point[][];
  /** Strokes down falling slopes: ahead of today in ink, on what is done in paper. */
  hachures: { ahead: string; cut: string };
  middles: Point[];
  today: Point | null;
  hardest: { week: number; at: Point } | null;
}

/** The outline begins at this share of the first week's load. */
const BEGINS_AT = 0.72;
/** Room above the largest load, so that no summit touches the top. */
const HEADROOM = 1.04;
/** Crags: places between two middles, and their largest distance from the straight line as a share of the scale. */
const CRAGS = [[0.2, 0.42], [0.55, 0.77]] as const;
const CRAG_SHARE = 0.03;
const STRATA_AT = [0.28, 0.52, 0.75] as const;
const HACHURE_STEP_PX = 4.2;
const DAYS_IN_WEEK = 7;

const round = (n: number) => Math.round(n * 10) / 10;

/** A fixed number from 0 to 1 for a week and a slot: the same week is always the same crag. */
function roughness(week: RidgeWeek, slot: number): number {
  const { year, week: number } = isoWeek(week.starts_on);
  const wave = Math.sin((year % 100) * 7.31 + number * 12.9898 + slot * 78.233) * 43758.5453;
  return wave - Math.floor(wave);
}

interface Scale {
  x: (weekPlace: number) => number;
  y: (load: number) => number;
  height: number;
}

function scaleOf({ weeks, width, base, top }: RidgeInput): Scale {
  const largest = Math.max(1, ...weeks.flatMap((week) => [week.planned_load, week.done_load, drawnLoad(week)]));
  return {
    x: (place) => (place * width) / weeks.length,
    y: (load) => base - ((base - top) * load) / (HEADROOM * largest),
    height: base - top,
  };
}

/** The load a week's fill is drawn at. The running week: done so far over due so far, so that a Wednesday is no cliff. */
export function drawnLoad(week: RidgeWeek): number {
  if (week.due_share !== null) return week.done_load / week.due_share;
  return week.heard === 'part' && week.done_load === 0 ? week.planned_load : week.done_load;
}

/** Points through `loads` at the weeks' middles, with two crags between each two. */
function profile(weeks: readonly RidgeWeek[], loads: readonly number[], scale: Scale): Point[] {
  const points: Point[] = [[0, scale.y((loads[0] ?? 0) * BEGINS_AT)]];
  loads.forEach((load, i) => {
    const here: Point = [scale.x(i + 0.5), scale.y(load)];
    points.push(here);
    if (i + 1 < loads.length) points.push(...crags(weeks[i] as RidgeWeek, here, [scale.x(i + 1.5), scale.y(loads[i + 1] as number)], scale));
  });
  return points;
}

function crags(week: RidgeWeek, from: Point, to: Point, scale: Scale): Point[] {
  return CRAGS.map(([low, high], slot) => {
    const along = low + (high - low) * roughness(week, slot);
    const off = (roughness(week, slot + 2) * 2 - 1) * CRAG_SHARE * scale.height;
    return [from[0] + (to[0] - from[0]) * along, from[1] + (to[1] - from[1]) * along + off];
  });
}

/** y on a line of points at x; beyond its ends the nearest end. */
export function heightAt(line: readonly Point[], x: number): number {
  const next = line.findIndex((point) => point[0] >= x);
  if (next < 0) return (line.at(-1) as Point)[1];
  if (next === 0) return (line[0] as Point)[1];
  const [a, b] = [line[next - 1] as Point, line[next] as Point];
  return a[1] + ((b[1] - a[1]) * (x - a[0])) / (b[0] - a[0] || 1);
}

/** The part of a line from x to x, standing upright on the ground. */
function area(line: readonly Point[], from: number, to: number, base: number): Point[] {
  const inside = line.filter(([x]) => x > from && x < to);
  return [[from, base], [from, heightAt(line, from)], ...inside, [to, heightAt(line, to)], [to, base]];
}

type Span = [from: number, to: number];

/** `whole` without `holes`, which may overlap and touch. */
function without(whole: Span, holes: readonly Span[]): Span[] {
  const spans: Span[] = [];
  let from = whole[0];
  for (const [a, b] of [...holes].sort((p, q) => p[0] - q[0])) {
    if (a > from) spans.push([from, Math.min(a, whole[1])]);
    from = Math.max(from, b);
  }
  if (from < whole[1]) spans.push([from, whole[1]]);
  return spans.filter(([a, b]) => b - a > 0.01);
}

export function computeRidge(input: RidgeInput): RidgePicture {
  const { weeks, base, width } = input;
  if (weeks.length === 0) return { outline: [], fills: [], dotted: [], strata: [], hachures: { ahead: '', cut: '' }, middles: [], today: null, hardest: null };
  const scale = scaleOf(input);
  const planned = weeks.map((week) => week.planned_load);
  const outline: Point[] = [...profile(weeks, planned, scale), [width, base]];
  const place = placer(input, scale);
  const nowX = place(input.today, input.dayShare ?? 0);
  const heardX = input.heardUntil === null ? 0 : Math.min(place(input.heardUntil, input.heardShare ?? 1), nowX);
  const holes = (input.unheard ?? []).map(({ from, to }): Span => [place(from, 0), Math.min(place(to, 1), nowX)]).filter(([a, b]) => b > a);
  const done = doneLine(weeks, scale, heardX);
  const heard = without([0, heardX], holes);
  const unheard = merge([...holes.map(([a, b]): Span => [a, Math.min(b, heardX)]).filter(([a, b]) => b > a), [heardX, nowX]]);
  return {
    outline,
    fills: heard.map(([a, b]) => area(done, a, b, base)),
    dotted: unheard.map(([a, b]) => area(outline, a, b, base)),
    strata: STRATA_AT.map((share) => outline.map(([x, y]) => [x, base - (base - y) * share])),
    hachures: { ahead: hachures(outline, nowX, width, base), cut: heard.map(([a, b]) => hachures(done, a, b, base)).join('') },
    middles: weeks.map((_, i) => outline[i * 3 + 1] as Point),
    today: isWithin(input) ? [nowX, heightAt(outline, nowX)] : null,
    hardest: hardestOf(planned, outline),
  };
}

function merge(spans: readonly Span[]): Span[] {
  return spans.filter(([a, b]) => b - a > 0.01);
}

function isWithin({ weeks, today }: RidgeInput): boolean {
  const days = daysBetween((weeks[0] as RidgeWeek).starts_on, today);
  return days >= 0 && days < weeks.length * DAYS_IN_WEEK;
}

function placer({ weeks, width }: RidgeInput, scale: Scale) {
  const first = (weeks[0] as RidgeWeek).starts_on;
  return (date: LocalDate, share: number) => Math.max(0, Math.min(width, scale.x((daysBetween(first, date) + share) / DAYS_IN_WEEK)));
}

/** What was done, as a line; after the last week heard it goes on level, since nothing is known beyond. */
function doneLine(weeks: readonly RidgeWeek[], scale: Scale, heardX: number): Point[] {
  const heard = weeks.filter((_, i) => scale.x(i) < heardX);
  const line = profile(heard, heard.map(drawnLoad), scale);
  return [...line, [Math.max(heardX, (line.at(-1) as Point)[0]), (line.at(-1) as Point)[1]]];
}

function hardestOf(planned: readonly number[], outline: readonly Point[]): RidgePicture['hardest'] {
  const most = Math.max(...planned);
  const week = planned.indexOf(most);
  return most > 0 ? { week, at: outline[week * 3 + 1] as Point } : null;
}

/** Short strokes on slopes that fall to the right, longer where it is steeper. */
function hachures(line: readonly Point[], from: number, to: number, base: number): string {
  let path = '';
  for (let x = from + HACHURE_STEP_PX; x < to - 2; x += HACHURE_STEP_PX) {
    const y = heightAt(line, x);
    const fall = heightAt(line, x + 1) - y;
    const length = Math.min(30 * Math.min(fall, 1), base - y - 4);
    if (fall > 0.08 && length > 2) path += `M${round(x)} ${round(y + 2)}l${round(length * 0.16)} ${round(length)}`;
  }
  return path;
}

/** First days of months within the weeks, at least `apart` px from each other and from the ends. */
export function monthMarks(input: RidgeInput, apart = 62): { date: LocalDate; x: number }[] {
  const first = input.weeks[0]?.starts_on;
  if (!first) return [];
  const place = placer(input, scaleOf(input));
  const marks: { date: LocalDate; x: number }[] = [];
  for (let day = 0; day < input.weeks.length * DAYS_IN_WEEK; day += 1) {
    const date = addDays(first, day);
    const x = place(date, 0);
    const roomy = x > 24 && x < input.width - 24 && x - (marks.at(-1)?.x ?? -apart) >= apart;
    if (date.endsWith('-01') && roomy) marks.push({ date, x });
  }
  return marks;
}

/** SVG path data through points. */
export const pathOf = (points: readonly Point[]): string => points.map(([x, y], i) => `${i ? 'L' : 'M'}${round(x)} ${round(y)}`).join('');
