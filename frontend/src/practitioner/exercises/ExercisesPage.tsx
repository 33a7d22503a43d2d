import '../editor/editor.css';
import { useState } from 'preact/hooks';
import { useResource } from '../api/resource';
import { KIT, type Items, type Kit } from '../api/types';
import { Button } from '../form/Button';
import { Several } from '../form/Choices';
import { Link } from '../form/Link';
import { failureWords } from '../editor/failure';
import { coded, e } from '../editor/words';
import { Looking } from '../rights/Needs';
import { PrintClass } from '../sheets/PrintClass';
import { ArchivedList } from '../own/ArchivedList';
import { o } from '../own/words';
import { ANY, find, fitting, offered, type Filter } from './filter';
import { Filters } from './Filters';
import { languageOf, type Entry } from './entry';
import { ListDrawing } from './RungDrawing';

/** The library: every movement, to be narrowed down by what it trains, spares and needs. */
export function ExercisesPage() {
  const library = useResource<Items<Entry>>('/exercises');
  const [filter, setFilter] = useState<Filter>(ANY);
  const entries = offered(library.data?.items ?? []);
  const found = find(entries, filter);
  const kit = (filter.kit ?? []) as Kit[];
  return (
    <Looking><main class="ed-page">
      <h1>{e('exercises')}</h1>
      <p>{e('exercisesText')} <Link to="/exercises/own/new">{o('newLink')}</Link></p>
      {library.data && <PrintClass entries={entries} />}
      {library.failure && <p role="alert">{failureWords(library.failure)} <Button small onClick={() => void library.reload()}>{e('tryAgain')}</Button></p>}
      {!library.data && !library.failure && <p role="status">{e('loading')}</p>}
      <search class="ed-filter">
        <div class="ed-fields"><Filters entries={entries} filter={filter} onChange={setFilter} /></div>
        <details>
          <summary>{kit.length ? e('kitChosen', { kit: kit.map((one) => coded('kit', one)).join(', ') }) : e('kitFilter')}</summary>
          <Several legend={e('kitFilterLegend')} options={KIT.map((value) => ({ value, label: coded('kit', value) }))} value={kit} onChange={(next) => setFilter({ ...filter, kit: next.length ? next : null })} />
        </details>
      </search>
      <p role="status">{library.data ? e('found', { n: found.length }) : ''} {library.data && found.length === 0 && <Button small onClick={() => setFilter(ANY)}>{e('clearFilter')}</Button>}</p>
      <ul class="ed-cards three">
        {found.map((entry) => <Card key={entry.code} entry={entry} kit={filter.kit} />)}
      </ul>
      <ArchivedList entries={library.data?.items ?? []} />
    </main></Looking>
  );
}

function Card({ entry, kit }: { entry: Entry; kit: readonly string[] | null }) {
  const fits = kit === null ? entry.ladder.length : fitting(entry, kit).length;
  return (
    <li>
      <ListDrawing entry={entry} />
      <h2 lang={languageOf(entry)}><Link to={`/exercises/${entry.code}`}>{entry.name}</Link></h2>
      <p lang={languageOf(entry)}>{entry.why}</p>
      <p class="soft">{entry.trains.map((code) => coded('quality', code)).join(', ')}{entry.own && ` · ${o('ownMark')}`}</p>
      <p class="soft">{e('rungsCount', { n: entry.ladder.length })}{kit !== null && fits < entry.ladder.length && `, ${e('someFit', { n: fits, of: entry.ladder.length })}`}</p>
    </li>
  );
}
