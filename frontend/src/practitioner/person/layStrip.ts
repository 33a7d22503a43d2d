/**
 * The day-by-day chart: pure, days and numbers in, points out. Every day has the same width; the height of a pain stem is its rating
 * and the height of a bar its load, each on one scale for the whole picture.
 */
import { addDays, daysBetween, isoWeekday, type LocalDate } from '../../shared/dates';
import type { PainReport, SessionItem } from '../api/types';

export interface StripInput {
  days: readonly SessionItem[];
  pain: readonly PainReport[];
  /** Events on which a flag is open. */
  flagged: ReadonlySet<string>;
  from: LocalDate;
  /** Last day shown. */
  to: LocalDate;
  today: LocalDate;
  /** Share of today that has passed, 0 to 1. */
  dayShare: number;
  /** Last day heard and the share of it that had passed then; null when no phone was ever heard. */
  heard: { day: LocalDate; share: number } | null;
  /** Size of the picture and of the column of words at its left, px. */
  width: number;
  left: number;
}
export interface Stem {
  event_id: string;
  x: number;
  /** Where the head is; the stem goes down to the row's ground. */
  y: number;
  rating: number;
  hollow: boolean;
  flagged: boolean;
}
export interface PainRow { region: PainReport['region']; side: PainReport['side']; ground: number; stems: Stem[] }
export interface Bar { key: string; x: number; width: number; y: number; height: number }
export interface Strip {
  dayWidth: number;
  height: number;
  top: number;
  mondays: { date: LocalDate; x: number }[];
  stones: { item: SessionItem; x: number; y: number }[];
  painRows: PainRow[];
  effort: { key: string; x: number; value: number }[];
  effortY: number;
  planned: Bar[];
  done: Bar[];
  ground: number;
  todayX: number;
  /** Ground that nobody has reported, from where the phone fell silent until now. */
  unheard: { x: number; width: number } | null;
}

/** Height of one point of pain, and of the highest bar, px. */
export const PAIN_POINT_PX = 9;
export const LOAD_PX = 84;
const TOP_PX = 22;
const STONE_ROW_PX = 20;
/** Room over a stem for its number and head, and under the row. */
const STEM_ROOM_PX = 30;
const LEAST_ROW_PX = 44;
const EFFORT_PX = 42;
const FOOT_PX = 26;
/** Reports of one place on one day stand side by side, at most this far apart. */
const STEM_APART_PX = 9;

const round = (n: number) => Math.round(n * 10) / 10;
const placeOf = ({ region, side }: PainReport) => `${region}.${side}`;

function groupBy<T>(items: readonly T[], key: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(key(item), [...(groups.get(key(item)) ?? []), item]);
  return groups;
}

/** Rows of pain: places with an open flag first, then the worst. */
function inOrder(rows: Map<string, PainReport[]>, flagged: ReadonlySet<string>): PainReport[][] {
  const weight = (reports: PainReport[]) =>
    (reports.some(({ event_id }) => flagged.has(event_id)) ? 100 : 0) + Math.max(...reports.map(({ rating }) => rating));
  return [...rows.values()].sort((a, b) => weight(b) - weight(a));
}

type XOf = (day: LocalDate) => number;

function layStems(reports: readonly PainReport[], ground: number, input: StripInput, xOf: XOf, dayWidth: number): Stem[] {
  return [...groupBy(reports, ({ day }) => day).values()].flatMap((sameDay) => {
    const inTime = [...sameDay].sort((a, b) => Number(a.when !== 'next_morning') - Number(b.when !== 'next_morning') || a.at.localeCompare(b.at));
    const apart = Math.min(STEM_APART_PX, dayWidth / inTime.length);
    return inTime.map((report, i) => ({
      event_id: report.event_id,
      x: round(xOf(report.day) + (i - (inTime.length - 1) / 2) * apart),
      y: ground - report.rating * PAIN_POINT_PX,
      rating: report.rating,
      hollow: report.when === 'next_morning',
      flagged: input.flagged.has(report.event_id),
    }));
  });
}

function layPain(input: StripInput, begin: number, xOf: XOf, dayWidth: number): { rows: PainRow[]; end: number } {
  const shown = input.pain.filter(({ day }) => day >= input.from && day <= input.to);
  let end = begin;
  const rows = inOrder(groupBy(shown, placeOf), input.flagged).map((reports) => {
    const highest = Math.max(...reports.map(({ rating }) => rating));
    end += Math.max(LEAST_ROW_PX, highest * PAIN_POINT_PX + STEM_ROOM_PX);
    const { region, side } = reports[0] as PainReport;
    return { region, side, ground: end, stems: layStems(reports, end, input, xOf, dayWidth) };
  });
  return { rows, end };
}

/** A session's place across its day: two on one day share it. */
function layBars(days: readonly SessionItem[], load: (item: SessionItem) => number, ground: number, largest: number, xOf: XOf, dayWidth: number): Bar[] {
  return [...groupBy(days, ({ date }) => date).values()].flatMap((sameDay) => {
    const width = (dayWidth * 0.72) / sameDay.length;
    return sameDay.flatMap((item, i) => {
      const height = (LOAD_PX * load(item)) / largest;
      const x = xOf(item.date) - (dayWidth * 0.72) / 2 + i * width;
      return height > 0 ? [{ key: item.planned_id, x: round(x), width: round(width), y: round(ground - height), height: round(height) }] : [];
    });
  });
}

function layUnheard({ heard, today, dayShare, from }: StripInput, edge: (day: LocalDate, share: number) => number, left: number) {
  const start = heard && heard.day >= from ? edge(heard.day, heard.share) : left;
  const end = edge(today, dayShare);
  return end > start ? { x: round(start), width: round(end - start) } : null;
}

export function layStrip(input: StripInput): Strip {
  const { from, to, left, width, today, dayShare } = input;
  const dayWidth = (width - left) / (daysBetween(from, to) + 1);
  const edge = (day: LocalDate, share: number) => left + (daysBetween(from, day) + share) * dayWidth;
  const xOf: XOf = (day) => round(edge(day, 0.5));
  const days = input.days.filter(({ date }) => date >= from && date <= to);
  const stacked = [...groupBy(days, ({ date }) => date).values()];
  const stones = stacked.flatMap((sameDay) => sameDay.map((item, i) => ({ item, x: xOf(item.date), y: TOP_PX + 16 + i * STONE_ROW_PX })));
  const stonesEnd = TOP_PX + 30 + (Math.max(1, ...stacked.map(({ length }) => length)) - 1) * STONE_ROW_PX;
  const pain = layPain(input, stonesEnd, xOf, dayWidth);
  const effortY = pain.end + 30;
  const ground = effortY + EFFORT_PX + LOAD_PX;
  const largest = Math.max(1, ...days.flatMap(({ planned_load, done_load }) => [planned_load ?? 0, done_load ?? 0]));
  const firstMonday = addDays(from, (8 - isoWeekday(from)) % 7);
  const weeks = Math.floor(daysBetween(firstMonday, to) / 7) + 1;
  return {
    dayWidth,
    top: TOP_PX,
    height: ground + FOOT_PX,
    mondays: Array.from({ length: weeks }, (_, week) => addDays(firstMonday, week * 7)).map((date) => ({ date, x: round(edge(date, 0)) })),
    stones,
    painRows: pain.rows,
    effort: days.flatMap((item) => (item.effort === null ? [] : [{ key: item.planned_id, x: xOf(item.date), value: item.effort }])),
    effortY,
    planned: layBars(days, (item) => item.planned_load ?? 0, ground, largest, xOf, dayWidth),
    done: layBars(days, (item) => item.done_load ?? 0, ground, largest, xOf, dayWidth),
    ground,
    todayX: round(edge(today, dayShare)),
    unheard: layUnheard(input, edge, left),
  };
}
