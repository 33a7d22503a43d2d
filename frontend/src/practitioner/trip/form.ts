/** A trip as it is typed, and what it means. What a file said keeps its own numbers; what was not touched comes back as it was. */
import { parseNumber } from '../../shared/numbers';
import { parseQuantity, toShown, type Quantity } from '../../shared/units';
import type { FromFile, Ground, LegBody, Trip, TripBody, TripLeg } from '../api/types';

export const GROUNDS = ['road', 'dirt_road', 'light_brush', 'heavy_brush', 'bog', 'sand', 'snow'] as const satisfies readonly Ground[];
/** As the server takes them: km, m, kg. */
export const MOST = { distance: 100, height: 100_000, mass: 60 } as const;
export const LEGS_MAX = 60;

/** A number as typed, beside the one it stood for. */
export interface Typed { text: string; si: number | null }
export interface LegForm { day: string; name: string; distance: Typed; ascent: Typed; descent: Typed; pack: Typed; file: FromFile | null }
export interface TripForm { pack: Typed; ground: Ground; legs: LegForm[] }
export type Problem = 'missing' | 'too_much' | 'both' | 'steeper' | 'backwards';
/** By the field's name: "legs.0.distance". */
export type Problems = Record<string, Problem>;

const typed = (quantity: Quantity, si: number | null): Typed => ({ text: si === null ? '' : String(toShown(quantity, si)), si });
const NOTHING: Typed = { text: '', si: null };

export const legForm = (leg: TripLeg): LegForm => ({
  day: String(leg.day), name: leg.name, file: leg.from_file,
  distance: typed('distance', leg.distance_km), ascent: typed('height', leg.ascent_m), descent: typed('height', leg.descent_m), pack: typed('mass', leg.pack_kg),
});
export const formOf = (trip: Trip): TripForm => ({ pack: trip.version === 0 ? NOTHING : typed('mass', trip.pack_kg), ground: trip.ground, legs: trip.legs.map(legForm) });
export const emptyLeg = (day: number): LegForm => ({ day: String(day), name: '', file: null, distance: NOTHING, ascent: NOTHING, descent: NOTHING, pack: NOTHING });
/** The day after the last one. */
export const nextDay = (legs: readonly LegForm[]): number => (parseNumber(legs.at(-1)?.day ?? '0') ?? 0) + 1;

/** In SI; undefined where it is no number. A text that was not touched means what it stood for, to the last digit. */
function meant(quantity: Quantity, { text, si }: Typed): number | null | undefined {
  if (text.trim() === '') return null;
  if (si !== null && text === String(toShown(quantity, si))) return si;
  return parseQuantity(quantity, text) ?? undefined;
}

class Reader {
  readonly problems: Problems = {};
  number(name: string, quantity: Quantity, value: Typed, required: boolean): number | null {
    const si = meant(quantity, value);
    if (si === undefined || (required && !si)) this.problems[name] = 'missing';
    else if (si !== null && si > MOST[quantity]) this.problems[name] = 'too_much';
    return si ?? null;
  }
  day(name: string, text: string, before: number): number {
    const day = parseNumber(text);
    if (day === null || !Number.isInteger(day) || day < 1 || day > LEGS_MAX) this.problems[name] = 'missing';
    else if (day < before) this.problems[name] = 'backwards';
    return day ?? before;
  }
  leg(at: number, leg: LegForm, before: number): LegBody {
    const name = `legs.${at}`;
    const distance_km = this.number(`${name}.distance`, 'distance', leg.distance, true) ?? 0;
    const [ascent_m, descent_m] = [this.number(`${name}.ascent`, 'height', leg.ascent, false), this.number(`${name}.descent`, 'height', leg.descent, false)];
    if ((ascent_m === null) !== (descent_m === null)) this.problems[`${name}.${ascent_m === null ? 'ascent' : 'descent'}`] ??= 'both';
    else if (!leg.file && distance_km && (ascent_m ?? 0) + (descent_m ?? 0) > distance_km * 1000) this.problems[`${name}.ascent`] ??= 'steeper';
    return { name: leg.name, day: this.day(`${name}.day`, leg.day, before), distance_km, ascent_m, descent_m, pack_kg: this.number(`${name}.pack`, 'mass', leg.pack, false), from_file: leg.file };
  }
}

/** What is wrong with it, or what is sent. */
export function bodyOf(form: TripForm): { problems: Problems; body: TripBody | null } {
  const reader = new Reader();
  const pack_kg = reader.number('pack', 'mass', form.pack, false) ?? 0;
  const legs: LegBody[] = [];
  form.legs.forEach((leg, at) => legs.push(reader.leg(at, leg, legs.at(-1)?.day ?? 1)));
  const counted = form.legs.some((leg) => leg.pack.text.trim() === '');
  if (counted && form.pack.text.trim() === '') reader.problems.pack = 'missing'; // no answer is not an empty pack
  const found = Object.keys(reader.problems).length > 0;
  return { problems: reader.problems, body: found ? null : { pack_kg, ground: form.ground, legs } };
}

/** What is kept, as it would be sent again: what an undo puts back. */
export const sentAgain = ({ pack_kg, ground, legs }: Trip): TripBody => ({ pack_kg, ground, legs });

/** How a file is cut, as the address says it; null where what was typed is no number. */
export function cutOf(how: 'file' | 'days' | 'places', text: string): string | null {
  if (how === 'file') return '';
  const numbers = text.split(/[\s;]+/).filter(Boolean);
  if (how === 'days') {
    const days = parseNumber(text);
    return days !== null && Number.isInteger(days) && days >= 1 && days <= LEGS_MAX ? `days=${days}` : null;
  }
  const cuts = numbers.map((one) => parseQuantity('distance', one));
  return cuts.length > 0 && cuts.every((one) => one !== null && one > 0) ? cuts.map((one) => `cut_km=${one}`).join('&') : null;
}
