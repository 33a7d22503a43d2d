import { useEffect, useState } from 'preact/hooks';
import { dayShort, time } from '../../shared/dates';
import { Button } from '../../shared/form/Button';
import { request, failureFrom, type Failure } from '../api/request';
import type { Overview, Timeline as Page, TimelineItem } from '../api/types';
import { FailureLine } from '../parts/status';
import { t } from '../words';
import { tellTimeline } from './tellTimeline';

/** Days shown at first and added at each press. House value. */
const DAYS_A_TIME = 7;

/** All entries: the server tells them oldest first, a page wants the newest, so all are fetched, 200 at a time. */
async function readAll(client: string): Promise<TimelineItem[]> {
  const items: TimelineItem[] = [];
  let cursor: string | null = null;
  do {
    const after: string = cursor ? `&cursor=${cursor}` : '';
    const page: Page = (await request<Page>('GET', `/clients/${client}/timeline?limit=200${after}`)).data;
    items.push(...page.items);
    cursor = page.next_cursor;
  } while (cursor);
  return items;
}

function Days({ items, overview }: { items: readonly TimelineItem[]; overview: Overview }) {
  const [shown, setShown] = useState(DAYS_A_TIME);
  const days = tellTimeline(items, new Map(overview.days.map(({ planned_id, name }) => [planned_id, name])));
  if (days.length === 0) return <p class="soft">{t('timelineNone')}</p>;
  return (
    <>
      {days.slice(0, shown).map(({ day, sentences }) => (
        <section key={day} class="told">
          <h3>{dayShort(day)}</h3>
          <ul>{sentences.map(({ id, at, text }) => <li key={id}><span class="soft tnum">{time(at, overview.client.time_zone)}</span> {text}</li>)}</ul>
        </section>
      ))}
      {shown < days.length ? <Button small onClick={() => setShown(shown + DAYS_A_TIME)}>{t('timelineOlder')}</Button> : <p class="soft note">{t('timelineEnd')}</p>}
    </>
  );
}

function Loaded({ overview }: { overview: Overview }) {
  const [items, setItems] = useState<TimelineItem[] | null>(null);
  const [failure, setFailure] = useState<Failure | null>(null);
  useEffect(() => {
    let gone = false;
    readAll(overview.client.id).then((all) => gone || (setItems(all), setFailure(null)), (error: unknown) => gone || setFailure(failureFrom(error)));
    return () => void (gone = true);
  }, [overview]);
  return (
    <>
      <FailureLine failure={failure} />
      {items ? <Days items={items} overview={overview} /> : !failure && <p role="status">{t('loading')}</p>}
    </>
  );
}

/** Everything the phone said; fetched only when it is opened. */
export function Timeline({ overview }: { overview: Overview }) {
  const [open, setOpen] = useState(false);
  return (
    <section aria-labelledby="timeline" class="screen-only">
      <h2 id="timeline">{t('timelineTitle')}</h2>
      <details onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>{t('timelineOpen')}</summary>
        {open && <Loaded overview={overview} />}
      </details>
    </section>
  );
}
