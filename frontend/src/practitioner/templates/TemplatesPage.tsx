import '../editor/editor.css';
import { useState } from 'preact/hooks';
import { navigate } from '../../shared/router';
import { useResource } from '../api/resource';
import type { Client, Items } from '../api/types';
import { Button } from '../form/Button';
import { Select } from '../form/Field';
import { toLibrary, type Entry, type Library } from '../exercises/entry';
import { exerciseName, facts, prescriptionWords, sessionName } from '../editor/phrases';
import { failureWords } from '../editor/failure';
import type { Template } from '../editor/types';
import { coded, e } from '../editor/words';
import { Doing, Looking, useMay } from '../rights/Needs';
import { templateFacts } from './facts';
import { OwnTemplate } from './OwnTemplate';

/** What there is to begin a program from. */
export function TemplatesPage() {
  const may = useMay();
  const templates = useResource<Items<Template>>('/templates');
  const library = useResource<Items<Entry>>('/exercises');
  const clients = useResource<Items<Client>>('/clients');
  const known = toLibrary(library.data?.items ?? []);
  const own = templates.data?.items.filter((one) => !one.shipped) ?? [];
  const shipped = templates.data?.items.filter((one) => one.shipped) ?? [];
  const people = (clients.data?.items ?? []).filter((one) => one.archived_at === null);
  return (
    <main class="ed-page">
      <h1>{e('templates')}</h1>
      <p>{e('templatesText')}</p>
      {templates.failure && <p role="alert">{failureWords(templates.failure)} <Looking><Button small onClick={() => void templates.reload()}>{e('tryAgain')}</Button></Looking></p>}
      {!templates.data && !templates.failure && <p role="status">{e('loading')}</p>}
      {templates.data && (
        <>
          <List id="own" title={e('templatesOwn')} empty={e(may ? 'templatesOwnNone' : 'templatesNone')} items={own} library={known} people={people} onChange={templates.reload} />
          <List id="shipped" title={e('templatesShipped')} empty="" items={shipped} library={known} people={people} onChange={templates.reload} />
        </>
      )}
    </main>
  );
}

interface ListProps {
  id: string;
  title: string;
  empty: string;
  items: readonly Template[];
  library: Library;
  people: readonly Client[];
  /** The list is to be asked for again. */
  onChange: () => Promise<void>;
}

function List({ id, title, empty, items, ...rest }: ListProps) {
  return (
    <section aria-labelledby={id}>
      <h2 id={id} tabIndex={-1}>{title}</h2>
      {items.length === 0 && <p>{empty}</p>}
      <ul class="ed-cards">
        {items.map((one) => <Card key={one.id} template={one} {...rest} />)}
      </ul>
    </section>
  );
}

function Card({ template, library, people, onChange }: Pick<ListProps, 'library' | 'people' | 'onChange'> & { template: Template }) {
  return (
    <li lang={template.shipped ? 'en' : undefined}>
      <h3>{template.name}</h3>
      {template.about && <p>{template.about}</p>}
      <p class="soft">{templateFacts(template)}</p>
      <details>
        <summary aria-label={`${e('templateContains')}: ${template.name}`}>{e('templateContains')}</summary>
        <Contents template={template} library={library} />
      </details>
      <Doing>
        <UseFor template={template} people={people} />
        {!template.shipped && <OwnTemplate template={template} onChange={onChange} />}
      </Doing>
    </li>
  );
}

function Contents({ template, library }: { template: Template; library: Library }) {
  const name = (key: string) => {
    const session = template.sessions.find((one) => one.key === key);
    return session ? sessionName(session) : key;
  };
  return (
    <>
      {template.sessions.map((session) => (
        <section key={session.key}>
          <h4>{sessionName(session)} <small>{coded('kind', session.kind)}, {facts(session)}</small></h4>
          {session.kind === 'circuit' && (
            <ol class="ed-plain">
              {session.prescriptions.map((one) => <li key={one.key}>{exerciseName(one, library)}: {prescriptionWords(one, library)}</li>)}
            </ol>
          )}
        </section>
      ))}
      <ul class="ed-plain">
        {template.weeks.map((week, i) => (
          <li key={i}>
            {e(i === template.weeks.length - 1 ? 'templateLastWeek' : 'templateWeek', { number: i + 1 })}{' '}
            {week.map((day) => `${coded('weekday', day.weekday)} ${name(day.session)}`).join(', ') || e('weekEmpty')}
          </li>
        ))}
      </ul>
    </>
  );
}

function UseFor({ template, people }: { template: Template; people: readonly Client[] }) {
  const [client, setClient] = useState('');
  const first = people[0]?.id ?? '';
  const use = () => navigate(`/clients/${client || first}/program?template=${encodeURIComponent(template.id)}`);
  if (people.length === 0) return null;
  return (
    <div class="ed-row ed-use">
      <Select label={e('templateUseFor')} value={client || first} options={people.map((one) => ({ value: one.id, label: one.display_name }))} onChange={setClient} />
      <Button small onClick={use} aria-label={`${e('templateUse')}: ${template.name}`}>{e('templateUse')}</Button>
    </div>
  );
}
