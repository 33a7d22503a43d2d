import { useEffect, useRef } from 'preact/hooks';
import { dayShort, today } from '../../../shared/dates';
import { query } from '../../../shared/router';
import { isProblem, type Failure } from '../../api/request';
import { useResource } from '../../api/resource';
import type { Progressed, Suggestions as Data, Suggestion } from '../../api/types';
import { Button } from '../../form/Button';
import { Link } from '../../form/Link';
import { countTitle } from '../../parts/counts';
import { FailureLine, ReadFailure } from '../../parts/status';
import { Doing } from '../../rights/Needs';
import { t } from '../../words';
import { readyOnes } from './choices';
import { Sheet } from './Sheet';
import { pathOf, useDeciding, type Deciding } from './useDeciding';

function Done({ done }: { done: Progressed }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), [done]);
  return (
    <section class="decided">
      <h3 tabIndex={-1} ref={heading}>{done.program_number === null ? t('sugDeclinedNow') : t('decidedPublished', { number: done.program_number })}</h3>
      {done.changes.length > 0 && <ul lang="en">{done.changes.map((change) => <li key={change}>{change}</li>)}</ul>}
    </section>
  );
}

const needsClearance = (failure: Failure | null): boolean => isProblem(failure, 'clearance-needed');

function Said({ deciding, client }: { deciding: Deciding; client: string }) {
  const { failure, old, done, busy } = deciding;
  return (
    <>
      <div role="status">{done && <Done done={done} />}{busy && <p class="note">{t(busy === 'sending' ? 'answering' : 'sugFetching')}</p>}</div>
      <div role="alert">{old && <p class="error">{t('sugOld')}</p>}</div>
      <FailureLine failure={failure}>{needsClearance(failure) && <Link to={`/clients/${client}/screening`}>{t('scrRecordClearance')}</Link>}</FailureLine>
    </>
  );
}

function Publish({ deciding }: { deciding: Deciding }) {
  const n = deciding.marked.length;
  const publish = () => {
    const faulty = deciding.faulty(deciding.marked);
    if (faulty) document.getElementById(`sug-${faulty.first.id}`)?.scrollIntoView({ block: 'start' });
    else void deciding.accept(deciding.marked);
  };
  return n > 0 ? <p class="publish-marked"><Button kind="main" small busy={deciding.busy !== null} onClick={publish}>{t('sugPublish', { n })}</Button></p> : <p class="soft note">{t('sugMarkFirst')}</p>;
}

const Line = ({ one }: { one: Suggestion }) => (
  <li><b lang="en">{one.exercise}:</b> <span lang="en">{one.sentence} {one.reasons.map(({ text }) => text).join(' ')} {one.would_change}</span></li>
);

/** Movements for which nothing changes, and suggestions that were declined; both on demand. */
function Others({ data, deciding }: { data: Data; deciding: Deciding }) {
  const still = data.items.filter(({ can_accept }) => !can_accept);
  return (
    <>
      {still.length > 0 && <details><summary>{t('sugStill', { n: still.length })}</summary><ul class="words">{still.map((one) => <Line key={one.id} one={one} />)}</ul></details>}
      {data.declined.length > 0 && (
        <details>
          <summary>{t('sugDeclinedBefore', { n: data.declined.length })}</summary>
          <ul class="words">
            {data.declined.map((one) => (
              <li key={one.id}>
                <b lang="en">{one.exercise}:</b> <span lang="en">{one.sentence}</span>
                <p class="note">{t('sugDeclinedLine', { day: dayShort(today(new Date(one.decided_at))), by: one.by, reason: one.reason })}</p>
                {one.can_accept && <Button small busy={deciding.busy !== null} onClick={() => void deciding.accept([{ first: one, all: [one] }])}>{t('sugAcceptAfterAll')}<span class="sr">: {one.exercise}</span></Button>}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

function Loaded({ client, data }: { client: string; data: Data }) {
  const ready = readyOnes(data.items);
  const deciding = useDeciding(client, data, ready);
  const heading = useRef<HTMLHeadingElement>(null);
  const wanted = query.value.get('at') === 'suggestions';
  useEffect(() => {
    if (!wanted) return;
    heading.current?.focus();
    heading.current?.scrollIntoView({ block: 'start' });
  }, [wanted]);
  return (
    <section class="suggestions" aria-labelledby="suggestions">
      <h2 id="suggestions" tabIndex={-1} ref={heading}>{ready.length > 0 ? t('sugTitle', { n: ready.length, count: countTitle(ready.length) }) : t('sugNone')}</h2>
      <Said deciding={deciding} client={client} />
      {ready.map((one) => <Sheet key={one.first.id} one={one} client={client} alone={ready.length === 1} deciding={deciding} />)}
      {ready.length > 1 && <Doing><Publish deciding={deciding} /></Doing>}
      <Others data={data} deciding={deciding} />
    </section>
  );
}

/** Which movements are ready to change, and the decision about each. */
export function Suggestions({ client }: { client: string }) {
  const { data, asOf, failure, reload } = useResource<Data>(pathOf(client), client);
  return (
    <>
      {data && data.program_number !== null && <Loaded client={client} data={data} />}
      <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} />
    </>
  );
}
