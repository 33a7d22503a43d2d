/** Where the lines of a leg's profile run: pure geometry. */
import type { FromFile, Slopes } from '../api/types';

type Stretch = FromFile['stretches'][number];
export interface Frame { width: number; height: number; lowM: number; highM: number; longestM: number }
export interface Laid {
  /** One outline and one ground under it for each piece whose heights are known. */
  lines: string[];
  areas: string[];
  /** Pieces without heights, as [from, to] in px. */
  unknown: [number, number][];
  steep: { path: string; x: number; y: number }[];
  end: number;
}

const known = (one: Stretch): one is Stretch & { height_m: number; rise_m: number } => one.height_m !== null && one.rise_m !== null;
const px = (value: number): number => Math.round(value * 10) / 10;

/** Runs of stretches whose heights are known and that meet. */
function runs(stretches: readonly Stretch[]): { x: number; y: number }[][] {
  const found: { x: number; y: number }[][] = [];
  let last: { x: number; y: number } | null = null;
  for (const one of stretches) {
    const joins = known(one) && last !== null && Math.abs(last.x - one.start_m) < 1 && Math.abs(last.y - one.height_m) < 1;
    if (!known(one)) { last = null; continue; }
    if (!joins) found.push([{ x: one.start_m, y: one.height_m }]);
    last = { x: one.start_m + one.length_m, y: one.height_m + one.rise_m };
    found.at(-1)?.push(last);
  }
  return found;
}

/** A profile in a frame that all legs share, so that their heights and lengths can be compared. */
export function layProfile(stretches: readonly Stretch[], descents: Slopes['steepest_descents'], frame: Frame): Laid {
  const across = frame.width / Math.max(frame.longestM, 1);
  const up = frame.height / Math.max(frame.highM - frame.lowM, 1);
  const at = ({ x, y }: { x: number; y: number }) => `${px(x * across)} ${px(frame.height - (y - frame.lowM) * up)}`;
  const found = runs(stretches);
  const lines = found.map((points) => `M${points.map(at).join('L')}`);
  const areas = found.map((points, i) => `${lines[i]}L${px((points.at(-1)?.x ?? 0) * across)} ${frame.height}L${px((points[0]?.x ?? 0) * across)} ${frame.height}Z`);
  const steep = descents.flatMap((descent) => {
    const one = stretches.find((stretch) => Math.abs(stretch.start_m - descent.from_km * 1000) < 0.5);
    if (!one || !known(one)) return [];
    const [from, to] = [{ x: one.start_m, y: one.height_m }, { x: one.start_m + one.length_m, y: one.height_m + one.rise_m }];
    return [{ path: `M${at(from)}L${at(to)}`, x: px(((from.x + to.x) / 2) * across), y: px(frame.height - ((from.y + to.y) / 2 - frame.lowM) * up) }];
  });
  const unknown = stretches.filter((one) => !known(one)).map((one): [number, number] => [px(one.start_m * across), px((one.start_m + one.length_m) * across)]);
  const last = stretches.at(-1);
  return { lines, areas, steep, unknown, end: px(last ? (last.start_m + last.length_m) * across : 0) };
}

/** The frame that holds every leg. */
export function frameOf(files: readonly FromFile[], width: number, height: number): Frame {
  const lows = files.flatMap(({ lowest_m }) => (lowest_m === null ? [] : [lowest_m]));
  const highs = files.flatMap(({ highest_m }) => (highest_m === null ? [] : [highest_m]));
  const long = files.map(({ stretches }) => { const last = stretches.at(-1); return last ? last.start_m + last.length_m : 0; });
  return { width, height, lowM: Math.min(...lows, 9000), highM: Math.max(...highs, -500), longestM: Math.max(...long, 1) };
}
