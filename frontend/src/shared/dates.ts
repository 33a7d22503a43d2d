/**
 * Calendar days are text, `YYYY-MM-DD`, and stay text: a day kept as an instant shows the day before in half of the world.
 * Arithmetic goes through UTC midnights, where every day has 24 hours.
 */
import { localeTag } from './words/mechanism';

export type LocalDate = string;
const DAY_MS = 86_400_000;

function utc(date: LocalDate): number {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  const at = match ? Date.UTC(Number(match[1]), Number(match[2]) - 1, Number(match[3])) : NaN;
  if (Number.isNaN(at) || fromUtc(at) !== date) throw new RangeError(`not a calendar day: ${date}`);
  return at;
}
const fromUtc = (at: number): LocalDate => new Date(at).toISOString().slice(0, 10);
const two = (n: number) => String(n).padStart(2, '0');

/** True for an existing day written `YYYY-MM-DD`. */
export function isLocalDate(text: string): boolean {
  try {
    return utc(text) > -Infinity;
  } catch {
    return false;
  }
}

/** The calendar day of an instant where the person is, or in `zone` (IANA name). */
export function today(now: Date, zone?: string): LocalDate {
  if (!zone) return `${String(now.getFullYear()).padStart(4, '0')}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return new Intl.DateTimeFormat('en-CA', { timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit' }).format(now);
}

export const addDays = (date: LocalDate, days: number): LocalDate => fromUtc(utc(date) + days * DAY_MS);
/** Days from `from` to `to`; negative when `to` is earlier. */
export const daysBetween = (from: LocalDate, to: LocalDate): number => Math.round((utc(to) - utc(from)) / DAY_MS);

/** 1 Monday to 7 Sunday (ISO 8601). */
export const isoWeekday = (date: LocalDate): number => new Date(utc(date)).getUTCDay() || 7;
export const mondayOf = (date: LocalDate): LocalDate => addDays(date, 1 - isoWeekday(date));
export const sundayOf = (date: LocalDate): LocalDate => addDays(mondayOf(date), 6);

/** ISO 8601 week: the year and the number belong to the week's Thursday. */
export function isoWeek(date: LocalDate): { year: number; week: number } {
  const thursday = addDays(mondayOf(date), 3);
  const year = Number(thursday.slice(0, 4));
  return { year, week: Math.floor(daysBetween(`${thursday.slice(0, 4)}-01-01`, thursday) / 7) + 1 };
}

/** An instant as the events carry it: local time with its own offset, `2026-05-03T07:12:09.120+02:00`. */
export function recordedAt(now: Date): string {
  const ahead = -now.getTimezoneOffset();
  const offset = `${ahead < 0 ? '-' : '+'}${two(Math.floor(Math.abs(ahead) / 60))}:${two(Math.abs(ahead) % 60)}`;
  const clock = [now.getHours(), now.getMinutes(), now.getSeconds()].map(two).join(':');
  return `${today(now)}T${clock}.${String(now.getMilliseconds()).padStart(3, '0')}${offset}`;
}

/** The calendar day written in an RFC 3339 time, by its own offset: what the writer's calendar showed. */
export const dayWritten = (time: string): LocalDate => time.slice(0, 10);

function show(date: LocalDate, options: Intl.DateTimeFormatOptions): string {
  return new Intl.DateTimeFormat(localeTag(), { ...options, timeZone: 'UTC' }).format(utc(date));
}

/** "Wed" / "Wednesday". */
export const dayName = (date: LocalDate, form: 'short' | 'long' = 'short') => show(date, { weekday: form });
/** "26 May"; never 26/5, which half of the readers take for another day. */
export const dayAndMonth = (date: LocalDate) => show(date, { day: 'numeric', month: 'long' });
/** "Wed 26 May". */
export const dayShort = (date: LocalDate) => show(date, { weekday: 'short', day: 'numeric', month: 'short' });
/** "26 May 2026". */
export const fullDate = (date: LocalDate) => show(date, { day: 'numeric', month: 'long', year: 'numeric' });
export const monthName = (date: LocalDate) => show(date, { month: 'long' });

/** "18:09" (or as the person's region writes it), where the person is or in `zone`. */
export function time(at: Date | string, zone?: string): string {
  return new Intl.DateTimeFormat(localeTag(), { hour: 'numeric', minute: '2-digit', ...(zone && { timeZone: zone }) }).format(new Date(at));
}
/** "Wed 18:09" for an instant. */
export function dayAndTime(at: Date | string, zone?: string): string {
  return `${dayName(today(new Date(at), zone))} ${time(at, zone)}`;
}
