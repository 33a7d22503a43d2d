import { useState } from 'preact/hooks';
import { dayShort, today } from '../../shared/dates';
import { refreshAll, useResource } from '../api/resource';
import { Button } from '../form/Button';
import { Choices } from '../form/Choices';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { Link } from '../form/Link';
import { FailureLine, ReadFailure, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { Owning } from '../rights/Needs';
import { t } from '../words';
import { setRetention, type Retention } from './calls';
import { c } from './words';

type Kind = 'until' | 'years';
const YEARS_MAX = 100;
const dayOf = (at: string): string => dayShort(today(new Date(at)));

/** Whole years, or null where it is none. */
export function yearsOf(text: string): number | null {
  const years = /^\d{1,3}$/.test(text.trim()) ? Number(text) : 0;
  return years >= 1 && years <= YEARS_MAX ? years : null;
}

function Choose({ data }: { data: Retention }) {
  const [kind, setKind] = useState<Kind | null>(data.chosen_at === null ? null : data.years === null ? 'until' : 'years');
  const [years, setYears] = useState(data.years === null ? '' : String(data.years));
  const [tried, setTried] = useState(false);
  const { busy, failure, run } = useWrite();
  const odd = kind === 'years' && yearsOf(years) === null;
  const save = async (event: Event) => {
    event.preventDefault();
    setTried(true);
    if (kind === null || odd) return;
    if (!(await run(() => setRetention(kind === 'until' ? null : yearsOf(years))))) return;
    say(c('retSaved'));
    refreshAll();
  };
  return (
    <Form shows onSubmit={(event) => void save(event)} noValidate>
      {data.chosen_at === null && <p class="banner">{c('retNotChosen')}</p>}
      <Choices legend={c('retLegend')} value={kind} onChange={setKind} error={tried && kind === null ? c('retPick') : null}
        options={[{ value: 'until', label: c('retUntil') }, { value: 'years', label: c('retYears') }]} />
      {kind === 'years' && <Field label={c('retYearsLabel')} inputMode="numeric" value={years} onInput={setYears} error={tried && odd ? c('retYearsOdd') : null} />}
      <FailureLine failure={failure} />
      <p><Button small kind="main" type="submit">{busy ? t('saving') : t('save')}</Button></p>
    </Form>
  );
}

function Lists({ data }: { data: Retention }) {
  return (
    <>
      <section>
        <h2>{c('retDue')}</h2>
        {data.due.length === 0 && <p class="soft">{c('retDueNone')}</p>}
        <ul class="people">
          {data.due.map((one) => (
            <li key={one.client_id}><Link to={`/clients/${one.client_id}/record`}>{one.display_name}</Link> <span class="soft note">{c('retDueLine', { archived: dayOf(one.archived_at), due: dayOf(one.due_since) })}</span></li>
          ))}
        </ul>
      </section>
      <section>
        <h2>{c('retErasures')}</h2>
        {data.erasures.length === 0 && <p class="soft">{c('retErasuresNone')}</p>}
        <ul class="people">
          {data.erasures.map((one) => (
            <li key={one.client_id}><Link to={`/clients/${one.client_id}/record`}>{data.names[one.client_id] ?? c('retLook')}</Link> <span class="soft note">{c('retErasureLine', { date: dayOf(one.due_at) })}</span></li>
          ))}
        </ul>
      </section>
    </>
  );
}

/** How long records are kept, whose time is over, and what will be erased. */
export function RetentionPage() {
  const { data, asOf, failure, reload } = useResource<Retention>('/retention');
  return (
    <main class="form-page">
      <h1>{c('retTitle')}</h1>
      <p class="measure">{c('retText')}</p>
      <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} />
      {!data && !failure && <p role="status">{t('loading')}</p>}
      {data && <Owning><Choose key={data.chosen_at ?? 'none'} data={data} /></Owning>}
      {data && <Lists data={data} />}
    </main>
  );
}
