/**
 * A recorded walk read on the phone, offline: only its four numbers and its day are taken, the file stays where it is. The numbers are
 * those of the practice's own rule (vectors hold both to it): great circles on the mean Earth radius, ascent counted from 5 m on,
 * nothing across a gap between segments.
 */
import { FILE_MAX_BYTES } from '../../sw/shared';

export type Fault = 'too_large' | 'not_gpx' | 'nowhere' | 'no_way';
export class WalkUnreadable extends Error {
  constructor(readonly fault: Fault) {
    super(fault);
  }
}
/** What a walk's file says; null where it says nothing. */
export interface WalkRead { distance_km: number; ascent_m: number | null; descent_m: number | null; minutes: number | null; startedAt: Date | null }

/** Mean Earth radius, m (Moritz 2000). */
const EARTH_RADIUS_M = 6_371_008.8;
/** A height counts once it lies this far from the last one counted, m. The practice's own rule. */
const ASCENT_THRESHOLD_M = 5;
const [HEIGHT_MIN_M, HEIGHT_MAX_M] = [-500, 9000];
const KM_MAX = 200;
const MINUTE_MS = 60_000;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

function apart(a: Point, b: Point): number {
  const across = Math.sin(radians(b.lon - a.lon) / 2);
  const along = Math.sin(radians(b.lat - a.lat) / 2);
  const chord = along * along + Math.cos(radians(a.lat)) * Math.cos(radians(b.lat)) * across * across;
  return 2 * EARTH_RADIUS_M * Math.asin(Math.min(1, Math.sqrt(chord)));
}

interface Point { lat: number; lon: number; height: number | null; time: number | null }

function attribute(tag: string, name: string): number {
  const found = new RegExp(`(?:^|\\s)${name}\\s*=\\s*["']([^"']*)["']`).exec(tag)?.[1]?.trim();
  return found ? Number(found) : NaN;
}

function inside(text: string, name: string): string | null {
  return new RegExp(`<(?:\\w+:)?${name}\\s*>([^<]*)<`).exec(text)?.[1]?.trim() ?? null;
}

function pointOf(tag: string, body: string): Point {
  const [lat, lon] = [attribute(tag, 'lat'), attribute(tag, 'lon')];
  if (!(Math.abs(lat) <= 90 && Math.abs(lon) <= 180)) throw new WalkUnreadable('nowhere');
  const own = body.replace(/<(?:\w+:)?extensions[\s\S]*$/, '');
  const ele = inside(own, 'ele');
  const height = ele ? Number(ele) : NaN;
  const time = Date.parse(inside(own, 'time') ?? '');
  return { lat, lon, height: height >= HEIGHT_MIN_M && height <= HEIGHT_MAX_M ? height : null, time: Number.isNaN(time) ? null : time };
}

/** Adds up what points say, segment by segment. */
class Sum {
  points = 0;
  way = 0;
  up = 0;
  down = 0;
  heights = 0;
  ms = 0;
  started: number | null = null;
  private last: Point | null = null;
  private counted: number | null = null;
  private lastTime: number | null = null;

  begin(): void {
    this.last = this.counted = this.lastTime = null;
  }
  take(point: Point): void {
    this.points += 1;
    if (this.last) this.way += apart(this.last, point);
    this.last = point;
    if (point.height !== null) this.rise(point.height);
    if (point.time !== null) this.pass(point.time);
  }
  private rise(height: number): void {
    this.heights += 1;
    this.counted ??= height;
    const step = height - this.counted;
    if (Math.abs(step) < ASCENT_THRESHOLD_M) return;
    this.counted = height;
    this.up += Math.max(step, 0);
    this.down += Math.max(-step, 0);
  }
  /** Time that runs backwards adds nothing. */
  private pass(time: number): void {
    this.started ??= time;
    if (this.lastTime !== null) this.ms += Math.max(time - this.lastTime, 0);
    this.lastTime = time;
  }
}

/** What lies inside a point whose opening tag ended at `from`: up to its end, or to the next point. */
function bodyBetween(text: string, tag: string, from: number, to: number): string {
  if (tag.endsWith('/')) return '';
  const body = text.slice(from, to);
  const end = body.search(/<\/(?:\w+:)?trkpt/);
  return end < 0 ? body : body.slice(0, end);
}

/** Segments and their points, as they stand in the text; one pass, whatever the file. A document type is refused, since it could do harm. */
function sumOf(text: string): Sum {
  if (/<!DOCTYPE/i.test(text) || !/<(?:\w+:)?gpx[\s>]/.test(text.slice(0, 5000))) throw new WalkUnreadable('not_gpx');
  const sum = new Sum();
  const tags = /<(?:\w+:)?(trkseg|trkpt)\b([^<>]*)>/g;
  for (let found = tags.exec(text); found;) {
    const from = tags.lastIndex;
    const next = tags.exec(text);
    const [, name, tag = ''] = found;
    if (name === 'trkseg') sum.begin();
    else sum.take(pointOf(tag, bodyBetween(text, tag, from, next?.index ?? text.length)));
    found = next;
  }
  return sum;
}

/**
 * The walk that a GPX text says.
 * @throws WalkUnreadable it is no GPX, a point lies nowhere, or there is no way in it.
 */
export function walkOf(text: string): WalkRead {
  const { points, way, heights, up, down, ms, started } = sumOf(text);
  if (points < 2 || way === 0 || way > KM_MAX * 1000) throw new WalkUnreadable('no_way');
  const known = heights > 0;
  return {
    distance_km: way / 1000,
    ascent_m: known ? up : null,
    descent_m: known ? down : null,
    minutes: ms > 0 ? Math.round(ms / MINUTE_MS) : null,
    startedAt: started === null ? null : new Date(started),
  };
}

/**
 * The same of a file. @throws WalkUnreadable also when it is larger than any walk.
 */
export async function readWalkFile(file: Blob): Promise<WalkRead> {
  if (file.size > FILE_MAX_BYTES) throw new WalkUnreadable('too_large');
  return walkOf(await file.text());
}
