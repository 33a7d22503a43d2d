import { Ridge } from '../../shared/ridge/Ridge';
import type { RidgeData } from '../api/types';
import { useWide } from './useWidth';

/** Share of the day that has passed at an instant where the person is, 0 to 1. */
export function shareOfDay(at: Date, zone: string): number {
  const clock = new Intl.DateTimeFormat('en-GB', { timeZone: zone, hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }).format(at);
  const [hours = 0, minutes = 0] = clock.split(':').map(Number);
  return (hours * 60 + minutes) / 1440;
}

const data = ({ weeks, today, heard_until, goal }: RidgeData) => ({ weeks, today, heardUntil: heard_until, trip: goal });

export const SmallSeason = ({ ridge }: { ridge: RidgeData }) => <Ridge {...data(ridge)} small />;

interface SeasonProps {
  ridge: RidgeData;
  now: Date;
  /** When the phone was last heard, RFC 3339. */
  heardAt: string | null;
  zone: string;
}

/** The season large, wide where there is room. */
export function Season({ ridge, now, heardAt, zone }: SeasonProps) {
  const { wide, box } = useWide(600);
  return (
    <div ref={box} class="season-large">
      <Ridge {...data(ridge)} wide={wide} dayShare={shareOfDay(now, zone)} {...(heardAt && { heardShare: shareOfDay(new Date(heardAt), zone) })} />
    </div>
  );
}
