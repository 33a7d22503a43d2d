/** Where the stones of a session lie. Rows turn like a path on a slope; only the drawing turns, the order of reading does not. */
export const ROW_WITH_HEADING_PX = 157;
export const ROW_PX = 121;
const STONES_BELOW_HEADING_PX = 44;
const STONES_BELOW_TOP_PX = 8;
/** Stones sit a little lower in turn, px; the middle of a stone is 36 px below that. */
const LOWER_PX = [2, 12, 0, 10] as const;
const MIDDLE_PX = 36;
/** How far outside the row the path turns, in percent of the width. */
const EDGE_PERCENT = { left: -1, right: 101 } as const;

export interface Leg {
  group: number;
  /** First set of this row within its group, and how many. */
  from: number;
  count: number;
  /** Place of the row's first stone in the whole session. */
  index: number;
  reversed: boolean;
  heading: 'left' | 'right' | null;
  height: number;
  above: number;
  /** Grid column (1-based) and drop (px) of each stone. */
  stones: { column: number; lower: number }[];
  /** x in percent, y in px. `after` is the session-wide index of the stone this piece leaves; -1 leads to the first. */
  pieces: { d: string; after: number }[];
}

export function columnsFor(widthPx: number, stonePx: number, gapPx = 8): number {
  return Math.max(2, Math.min(6, Math.floor((widthPx + gapPx) / (stonePx + gapPx))));
}

/** Rows for groups of the given sizes. Paths are computed after, since a row must know whether another follows. */
export function layTrail(sizes: readonly number[], columns: number): Leg[] {
  const legs: Leg[] = [];
  let index = 0;
  for (const [group, size] of sizes.entries()) {
    for (let from = 0; from < size; from += columns) {
      legs.push(layRow(group, from, Math.min(columns, size - from), index + from, legs.length, columns));
    }
    index += size;
  }
  legs.forEach((leg, i) => (leg.pieces = pieces(leg, columns, i === 0, i === legs.length - 1)));
  return legs;
}

function layRow(group: number, from: number, count: number, index: number, row: number, columns: number): Leg {
  const reversed = row % 2 === 1;
  const stones = Array.from({ length: count }, (_, i) => ({
    column: reversed ? columns - i : i + 1,
    lower: LOWER_PX[i % LOWER_PX.length] as number,
  }));
  const titled = from === 0;
  // The path comes in at one side; the heading keeps clear of it on the other.
  const heading = !titled ? null : row === 0 || reversed ? 'left' : 'right';
  return {
    group, from, count, index, reversed, heading, stones, pieces: [],
    height: titled ? ROW_WITH_HEADING_PX : ROW_PX,
    above: titled ? STONES_BELOW_HEADING_PX : STONES_BELOW_TOP_PX,
  };
}

type Point = [x: number, y: number];
const r = (value: number) => Math.round(value * 10) / 10;

function middles(leg: Leg, columns: number): Point[] {
  return leg.stones.map(({ column, lower }) => [((column - 0.5) * 100) / columns, leg.above + lower + MIDDLE_PX]);
}

function pieces(leg: Leg, columns: number, first: boolean, last: boolean): Leg['pieces'] {
  const points = middles(leg, columns);
  const start = points[0] as Point;
  const end = points[points.length - 1] as Point;
  const [comesIn, goesOut] = leg.reversed ? [EDGE_PERCENT.right, EDGE_PERCENT.left] : [EDGE_PERCENT.left, EDGE_PERCENT.right];
  const between = points.slice(1).map((to, i) => ({ d: step(points[i] as Point, to), after: leg.index + i }));
  const enter = first ? [] : [{ d: entry(comesIn, start), after: leg.index - 1 }];
  const leave = { d: last ? toCairn(end, goesOut, leg.height) : exit(end, goesOut, leg.height), after: leg.index + leg.count - 1 };
  return [...enter, ...between, leave];
}

function step([x, y]: Point, [toX, toY]: Point): string {
  const half = r((x + toX) / 2);
  return `M${r(x)} ${y}C${half} ${y + 6} ${half} ${toY - 6} ${r(toX)} ${toY}`;
}

function entry(edge: number, [x, y]: Point): string {
  return `M${edge} 0C${edge} ${r(y * 0.55)} ${r((x + edge) / 2)} ${y} ${r(x)} ${y}`;
}

function exit([x, y]: Point, edge: number, height: number): string {
  return `M${r(x)} ${y}C${r((x + edge) / 2)} ${y} ${edge} ${y + 24} ${edge} ${height}`;
}

function toCairn([x, y]: Point, edge: number, height: number): string {
  return `M${r(x)} ${y}C${r((x + edge) / 2)} ${y} ${edge} ${y + 12} ${edge} ${y + 34}S${r((edge + 50) / 2)} ${height} 50 ${height}`;
}
