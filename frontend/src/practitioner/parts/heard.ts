/** When a phone was last heard, in words. Silence is never read as not done. */
import { dayAndTime, dayShort, daysBetween, time, today } from '../../shared/dates';
import { t } from '../words';

/** From this many days on silence is named as such; the server's caseload uses the same. House value, days. */
export const SILENT_DAYS = 5;

/** "heard today 06:50", "heard until Wed 18:09", "not heard since Thu 20 May", "no phone heard yet". */
export function heardWords(lastHeard: string | null, now: Date, zone: string): string {
  if (!lastHeard) return t('neverHeard');
  const day = today(new Date(lastHeard), zone);
  const ago = daysBetween(day, today(now, zone));
  if (ago <= 0) return t('heardToday', { time: time(lastHeard, zone) });
  if (ago < SILENT_DAYS) return t('heardUntil', { time: dayAndTime(lastHeard, zone) });
  return t('notHeardSince', { date: dayShort(day) });
}

/** "Wed 26 May 18:09" for an instant, "Wed 26 May" for a day. */
export function moment(at: string, zone: string): string {
  if (at.length === 10) return dayShort(at);
  return `${dayShort(today(new Date(at), zone))} ${time(at, zone)}`;
}
