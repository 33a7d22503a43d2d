import { useEffect, useRef, useState } from 'preact/hooks';
import { dayShort, isLocalDate, time } from '../../shared/dates';
import { query } from '../../shared/router';
import { request, failureFrom, type Failure } from '../api/request';
import type { Overview, Timeline as Page } from '../api/types';
import { Button } from '../form/Button';
import { FailureLine } from '../parts/status';
import { Looking } from '../rights/Needs';
import { t } from '../words';
import { wantedDay } from './lookAt';
import { wholeDays, type Heard, type Names, type ToldDay } from './tellTimeline';

/** Days shown at first and added at each press. House value. */
const DAYS_A_TIME = 7;
const NOTHING_READ: Heard = { items: [], next: '' };

/** Reads on, newest first, until so many days are whole or there is nothing earlier. */
async function readOn(client: string, from: Heard, days: number, names: Names): Promise<Heard> {
  let heard = from;
  while (heard.next !== null && wholeDays(heard, names).length < days) {
    const after = heard.next && `&cursor=${heard.next}`;
    const page: Page = (await request<Page>('GET', `/clients/${client}/timeline?order=newest&limit=200${after}`)).data;
    heard = { items: [...heard.items, ...page.items], next: page.next_cursor };
  }
  return heard;
}

function useTimeline(overview: Overview) {
  const names: Names = new Map(overview.days.map(({ planned_id, name }) => [planned_id, name]));
  const [heard, setHeard] = useState<Heard | null>(null);
  const [shown, setShown] = useState(DAYS_A_TIME);
  const [failure, setFailure] = useState<Failure | null>(null);
  const turn = useRef(0);
  const read = async (from: Heard, days: number) => {
    const mine = ++turn.current; // an answer that a newer question has overtaken is dropped
    try {
      const found = await readOn(overview.client.id, from, days, names);
      if (mine !== turn.current) return;
      setHeard(found);
      setShown(days);
      setFailure(null);
    } catch (error) {
      if (mine === turn.current) setFailure(failureFrom(error));
    }
  };
  useEffect(() => void read(NOTHING_READ, shown), [overview]);
  useEffect(() => () => void (turn.current += 1), []);
  const whole = heard && wholeDays(heard, names);
  return {
    days: whole && whole.slice(0, shown),
    hasMore: heard !== null && (heard.next !== null || (whole?.length ?? 0) > shown),
    failure,
    earlier: () => void read(heard ?? NOTHING_READ, shown + DAYS_A_TIME),
    again: () => void read(NOTHING_READ, shown),
  };
}

const Day = ({ told: { day, sentences }, zone }: { told: ToldDay; zone: string }) => (
  <section class="told">
    <h3 id={`told-${day}`} tabIndex={-1}>{dayShort(day)}</h3>
    <ul>{sentences.map(({ id, at, text }) => <li key={id}><span class="soft tnum">{time(at, zone)}</span> {text}</li>)}</ul>
  </section>
);

function Loaded({ overview }: { overview: Overview }) {
  const { days, hasMore, failure, earlier, again } = useTimeline(overview);
  const wanted = wantedDay.value;
  useEffect(() => {
    if (!wanted || !days) return;
    const heading = document.getElementById(`told-${wanted}`);
    if (!heading && hasMore) return earlier();
    wantedDay.value = null;
    heading?.focus();
    heading?.scrollIntoView({ block: 'center' });
  }, [wanted, days?.length]);
  return (
    <>
      {!days && !failure && <p role="status">{t('loading')}</p>}
      {days?.map((told) => <Day key={told.day} told={told} zone={overview.client.time_zone} />)}
      <FailureLine failure={failure}><Button small kind="quiet" onClick={days ? earlier : again}>{t('tryAgain')}</Button></FailureLine>
      {days && hasMore && <Button small onClick={earlier}>{t('timelineOlder')}</Button>}
      {days && !hasMore && <p class="soft note">{t(days.length === 0 ? 'timelineNone' : 'timelineEnd')}</p>}
    </>
  );
}

/** Everything the phone said; fetched only when it is opened. */
export function Timeline({ overview }: { overview: Overview }) {
  const [open, setOpen] = useState(false);
  const linked = query.value.get('day');
  useEffect(() => {
    if (linked && isLocalDate(linked)) wantedDay.value = linked; // another page's evidence leads here
  }, [linked]);
  useEffect(() => {
    if (wantedDay.value) setOpen(true);
  }, [wantedDay.value]);
  return (
    <section aria-labelledby="timeline" class="screen-only">
      <h2 id="timeline">{t('timelineTitle')}</h2>
      <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>{t('timelineOpen')}</summary>
        {open && <Looking><Loaded overview={overview} /></Looking>}
      </details>
    </section>
  );
}
