import { useState } from 'preact/hooks';
import { time } from '../../shared/dates';
import { draft } from '../api/drafts';
import { useResource } from '../api/resource';
import { me } from '../api/session';
import type { Caseload, CaseloadRow } from '../api/types';
import { Button, ButtonLink } from '../form/Button';
import { Field } from '../form/Field';
import { ReadFailure } from '../parts/status';
import { Looking, useMay } from '../rights/Needs';
import { t } from '../words';
import { Key } from './Key';
import { MessageDialog } from './MessageDialog';
import { Pairings } from './Pairings';
import { Row } from './Row';
import { GROUPS, groupWords, hasName, headline } from './sentences';
import { useSteady } from './useSteady';

const COLUMNS = ['columnPerson', 'columnHappened', 'columnSuggests', 'columnDays', 'columnSeason'] as const;

interface TableProps {
  rows: readonly CaseloadRow[];
  now: Date;
  onWrite: (client: CaseloadRow['client']) => void;
}

function Groups({ rows, now, onWrite }: TableProps) {
  const groups = GROUPS.map((group) => ({ group, rows: rows.filter((row) => row.group === group) })).filter((one) => one.rows.length > 0);
  return (
    <>
      {groups.map(({ group, rows: members }) => {
        const { title, text } = groupWords(group, members.length);
        return (
          <tbody key={group}>
            <tr class="group"><th colSpan={COLUMNS.length} scope="rowgroup"><b class={group === 'needs_you' ? 'call' : ''}>{title}</b> <span>{text}</span></th></tr>
            {members.map((row, i) => <Row key={row.client.id} row={row} now={now} onWrite={onWrite} isFirst={group === 'needs_you' && i === 0} />)}
          </tbody>
        );
      })}
    </>
  );
}

function Table({ handlers, ...props }: TableProps & { handlers: object }) {
  return (
    <table class="caseload" {...handlers}>
      <caption class="sr">{t('caseloadCaption')}</caption>
      <thead><tr>{COLUMNS.map((column) => <th key={column} scope="col">{t(column)}</th>)}</tr></thead>
      <Groups {...props} />
    </table>
  );
}

function Filter({ rows, found, text, onInput }: { rows: number; found: number; text: string; onInput: (text: string) => void }) {
  const wanted = text.trim();
  return (
    <div class="filter">
      <Looking><Field type="search" label={t('filterName')} value={text} onInput={onInput} name="filter" autoComplete="off" /></Looking>
      <p class="soft note" role="status">{wanted && rows > 0 && (found === 0 ? t('filterNobody', { text: wanted }) : t('filterCount', { n: found, text: wanted }))}</p>
    </div>
  );
}

type Steady = ReturnType<typeof useSteady>;

function Body({ shown, waiting, show, handlers }: Steady & { shown: Caseload }) {
  const [writeTo, setWriteTo] = useState<CaseloadRow['client'] | null>(null);
  const filter = draft('caseload.filter');
  const all = shown.items;
  const may = useMay();
  const rows = filter.value.trim() ? all.filter((row) => hasName(row.client.display_name, filter.value)) : all;
  if (all.length === 0) return <p class="empty">{t(may ? 'emptyText' : 'emptyLook')}</p>;
  return (
    <>
      <div class="above-table">
        <Filter rows={all.length} found={rows.length} text={filter.value} onInput={(text) => (filter.value = text)} />
        <Key />
        <span class="sr" role="status">{waiting > 0 ? t('changesWaitingSaid', { n: waiting }) : ''}</span>
        <Looking>{waiting > 0 && <Button small onClick={show}>{t('changesWaiting', { n: waiting })}</Button>}</Looking>
      </div>
      {rows.length > 0 && <Table rows={rows} now={new Date(shown.as_of)} onWrite={setWriteTo} handlers={handlers} />}
      <MessageDialog client={writeTo} onClose={() => setWriteTo(null)} />
    </>
  );
}

/** Who needs the practitioner first, and why. */
export function CaseloadPage() {
  const { data, asOf, failure, reload } = useResource<Caseload>('/caseload');
  // The headline counts what stands below it: news that waits is in neither.
  const steady = useSteady(data);
  const { shown } = steady;
  const zone = me.value?.practice.time_zone;
  return (
    <main class="caseload-page">
      <div class="headline">
        <h1>{shown ? headline(shown.headline) : t('caseload')}</h1>
        <p class="soft tnum">{shown && t('asOf', { time: time(shown.as_of, zone) })}</p>
        <span class="spacer" />
        <ButtonLink small kind={shown?.items.length === 0 ? 'main' : 'other'} to="/clients/new">{t('newClient')}</ButtonLink>
      </div>
      <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} />
      <Pairings />
      {shown ? <Body {...steady} shown={shown} /> : !failure && <p role="status">{t('loading')}</p>}
    </main>
  );
}
