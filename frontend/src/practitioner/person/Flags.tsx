import { useEffect, useRef, useState } from 'preact/hooks';
import { query } from '../../shared/router';
import { request } from '../api/request';
import { refreshAbout } from '../api/resource';
import type { Action, Decided, Flag, ProgramVersion } from '../api/types';
import { countTitle } from '../parts/counts';
import { Doing } from '../rights/Needs';
import { t } from '../words';
import { decidedWords, decisionWords } from './answers';
import { FlagCard } from './FlagCard';

interface Done { flag: Flag; words: string; changes: readonly string[] }

/** What the new version changed; without an answer the sentence alone stands, which is true by itself. */
async function changesOf(client: string, number: number | null): Promise<readonly string[]> {
  if (number === null) return [];
  try {
    return (await request<ProgramVersion>('GET', `/clients/${client}/programs/${number}`)).data.changes;
  } catch {
    return [];
  }
}

function DoneCard({ done, isNewest }: { done: Done; isNewest: boolean }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (isNewest) heading.current?.focus(); // the button that had the focus is gone
  }, []);
  return (
    <section class="decided">
      <h3 tabIndex={-1} ref={heading}>{t('decidedTitle', { title: done.flag.title })}</h3>
      <p>{done.words}</p>
      {done.changes.length > 0 && <ul lang="en">{done.changes.map((change) => <li key={change}>{change}</li>)}</ul>}
    </section>
  );
}

const Earlier = ({ flags }: { flags: readonly Flag[] }) => (
  <details>
    <summary>{t('earlierFindings', { n: flags.length })}</summary>
    {flags.map((flag) => (
      <div class="earlier" key={flag.id}>
        <p><b>{flag.title}</b>, {t('statusClosed')}</p>
        {flag.decisions.map((decision) => <p class="note soft" key={decision.decided_at}>{decisionWords(decision)}</p>)}
      </div>
    ))}
  </details>
);

/** What is to be decided about one person, and what was. */
export function Flags({ client, flags }: { client: string; flags: readonly Flag[] }) {
  const [done, setDone] = useState<readonly Done[]>([]);
  const wanted = query.value.get('flag');
  const open = flags.filter(({ status }) => status === 'open');
  const seen = flags.filter(({ status }) => status === 'acknowledged');
  const closed = flags.filter(({ status }) => status === 'closed');
  const onDecided = async ({ flag, program_number }: Decided, action: Action) => {
    const changes = await changesOf(client, program_number);
    setDone((before) => [{ flag, words: decidedWords(action, { program_number }), changes }, ...before.filter((one) => one.flag.id !== flag.id)]);
    await refreshAbout(client);
  };
  const card = (flag: Flag) => <FlagCard key={flag.id} flag={flag} wanted={flag.id === wanted} onDecided={(decided, action) => void onDecided(decided, action)} />;
  return (
    <>
      <h2>{open.length > 0 ? t('toDecide', { n: open.length, count: countTitle(open.length) }) : t('nothingOpen')}</h2>
      <div role="status">{done.map((one, i) => <DoneCard key={one.flag.id} done={one} isNewest={i === 0} />)}</div>
      {open.length === 0 && <p class="soft">{t('nothingOpenText')}</p>}
      {open.map(card)}
      {open.length > 0 && <Doing><p class="soft note">{t('nothingChanges')}</p></Doing>}
      {seen.map(card)}
      {closed.length > 0 && <Earlier flags={closed} />}
    </>
  );
}
