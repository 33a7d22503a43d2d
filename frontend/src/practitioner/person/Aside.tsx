import { useEffect, useRef, useState } from 'preact/hooks';
import { query } from '../../shared/router';
import { retryEntry } from '../api/calls';
import { refreshAbout, useResource } from '../api/resource';
import type { Items, RefusedEvent } from '../api/types';
import { Button } from '../form/Button';
import { countTitle } from '../parts/counts';
import { moment } from '../parts/heard';
import { FailureLine, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';

/** Indented where it is JSON; else exactly as it came. */
export function readable(raw: string): string {
  try {
    return JSON.stringify(JSON.parse(raw), null, 2);
  } catch {
    return raw;
  }
}

/** Why an entry could not be taken, each fault on its own. */
export function problemWords({ detail, title, errors }: RefusedEvent['problem']): string {
  const faults = (errors ?? []).map(({ pointer, detail: fault }) => `${pointer.replace(/^\//, '').replaceAll('/', ' › ')}: ${fault}`);
  return [detail ?? title ?? t('asideUnknown'), ...faults].join(' ');
}

function Entry({ client, entry, zone }: { client: string; entry: RefusedEvent; zone: string }) {
  const { busy, failure, run } = useWrite();
  const [still, setStill] = useState<string | null>(null);
  const received = moment(entry.received_at, zone);
  const retry = async () => {
    const answer = await run(() => retryEntry(client, entry.event_id));
    if (!answer) return;
    setStill(answer.accepted ? null : (answer.problem?.detail ?? t('asideUnknown')));
    if (answer.accepted) say(t('asideAccepted'));
    void refreshAbout(client);
  };
  return (
    <li>
      <p>{problemWords(entry.problem)} <span class="soft note">{t('asideReceived', { time: received })}</span></p>
      <details><summary>{t('asideRaw')}</summary><pre tabIndex={0}>{readable(entry.raw)}</pre></details>
      <div role="status">{still && <p>{t('asideStill', { detail: still })}</p>}</div>
      <FailureLine failure={failure} />
      <Button small aria-label={t('asideRetryEntry', { time: received })} busy={busy} onClick={() => void retry()}>{t('asideRetry')}</Button>
    </li>
  );
}

/** Entries that came and could not be taken: kept whole, with the reason, until a person has dealt with them. */
export function Aside({ client, zone }: { client: string; zone: string }) {
  const { data, failure } = useResource<Items<RefusedEvent>>(`/clients/${client}/refused-events`, client);
  const heading = useRef<HTMLHeadingElement>(null);
  const wanted = query.value.get('at') === 'aside';
  const items = data?.items ?? [];
  useEffect(() => {
    if (wanted && items.length > 0) heading.current?.focus();
  }, [wanted, items.length > 0]);
  if (items.length === 0) return <FailureLine failure={failure} />;
  return (
    <section aria-labelledby="aside">
      <h2 id="aside" tabIndex={-1} ref={heading}>{t('asideTitle')}</h2>
      <p>{t('asideText', { n: items.length, count: countTitle(items.length) })}</p>
      <ul class="words">{items.map((entry) => <Entry key={`${entry.device_id}.${entry.event_id}`} client={client} entry={entry} zone={zone} />)}</ul>
    </section>
  );
}
