import { localeTag } from '../../shared/words/mechanism';
import { draft } from '../api/drafts';
import { useResource } from '../api/resource';
import type { Sources, Work } from '../api/types';
import { Field } from '../form/Field';
import { ReadFailure } from '../parts/status';
import { Looking } from '../rights/Needs';
import { shortCitation } from '../person/answers';
import { t } from '../words';

type Numbers = Sources['numbers'];

const plain = (name: string): string => name.replace(/_/g, ' ').toLowerCase();

/** Whether all of the words typed stand somewhere in it. */
export function has(wanted: string, ...texts: readonly string[]): boolean {
  const all = texts.join(' ').toLowerCase();
  return wanted.toLowerCase().split(/\s+/).every((word) => all.includes(word));
}

function NumberTable({ numbers, works }: { numbers: Numbers; works: ReadonlyMap<string, Work> }) {
  const shown = new Intl.NumberFormat(localeTag(), { maximumFractionDigits: 6 });
  return (
    <div class="table-scroll" role="region" aria-label={t('sourcesNumbers')} tabIndex={0}>
      <table class="plain">
        <thead><tr>{(['sourcesName', 'sourcesValue', 'sourcesKind', 'sourcesSource', 'sourcesNote'] as const).map((key) => <th key={key} scope="col">{t(key)}</th>)}</tr></thead>
        <tbody>
          {numbers.map(({ name, value, unit, kind, source, note, where }) => {
            const work = works.get(source);
            return (
              <tr key={where + name}>
                <th scope="row" lang="en">{plain(name)}<br /><span class="soft">{where}</span></th>
                <td class="tnum">{value === null ? t('sourcesTable') : <>{shown.format(value)} <span lang="en">{unit}</span></>}</td>
                <td>{t(`kind_${kind}`)}</td>
                <td>{work ? <a href={`#work-${source}`}>{shortCitation(work)}</a> : kind === 'house' ? t('sourcesHouse') : source}</td>
                <td lang="en">{note}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

const OneWork = ({ work }: { work: Work }) => (
  <li id={`work-${work.key}`} tabIndex={-1}>
    <p>{work.authors} {work.year}: <cite lang="en">{work.title}</cite>. <span lang="en">{work.where}.</span></p>
    <p class="note soft">{t('sourcesPopulation', { text: work.population })}</p>
    <p class="note soft">{t('sourcesReadAs', { text: work.read_as })}</p>
  </li>
);

function Body({ works, numbers }: Sources) {
  const wanted = draft('sources.filter');
  const text = wanted.value.trim();
  const byKey = new Map(works.map((work) => [work.key, work]));
  const cited = (source: string) => { const work = byKey.get(source); return work ? `${work.authors} ${work.year}` : source; };
  const found = numbers.filter((one) => !text || has(text, plain(one.name), one.note, one.unit, one.kind, one.where, cited(one.source)));
  const foundWorks = works.filter((one) => !text || has(text, one.authors, one.year, one.title, one.population) || found.some(({ source }) => source === one.key));
  return (
    <>
      <Looking><Field type="search" label={t('sourcesFilter')} value={wanted.value} onInput={(to) => (wanted.value = to)} autoComplete="off" name="sources-filter" /></Looking>
      <p class="soft note" role="status">{t('sourcesFound', { n: found.length })}</p>
      <section><h2>{t('sourcesNumbers')}</h2><NumberTable numbers={found} works={byKey} /></section>
      <section aria-labelledby="works"><h2 id="works">{t('sourcesWorks')}</h2><ul class="words">{foundWorks.map((work) => <OneWork key={work.key} work={work} />)}</ul></section>
    </>
  );
}

/** Where our numbers come from: made from the same data that the rules use. */
export function SourcesPage() {
  const { data, asOf, failure, reload } = useResource<Sources>('/sources');
  return (
    <main class="sources-page">
      <h1>{t('sourcesTitle')}</h1>
      <p>{t('sourcesText')}</p>
      <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} />
      {data ? <Body {...data} /> : !failure && <p role="status">{t('loading')}</p>}
    </main>
  );
}
