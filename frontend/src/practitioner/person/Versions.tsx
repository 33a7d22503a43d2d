import { dayShort, today } from '../../shared/dates';
import { useResource } from '../api/resource';
import type { Items, ProgramVersion } from '../api/types';
import { FailureLine } from '../parts/status';
import { t } from '../words';

function changeWords({ number, changes }: ProgramVersion): readonly string[] {
  if (changes.length > 0) return changes;
  return [number === 1 ? t('versionFirst') : t('versionNoChange')];
}

/** Every published version with what it changed, newest first. */
export function Versions({ client }: { client: string }) {
  const { data, failure } = useResource<Items<ProgramVersion>>(`/clients/${client}/programs`, client);
  const versions = [...(data?.items ?? [])].sort((a, b) => b.number - a.number);
  return (
    <section aria-labelledby="versions">
      <h2 id="versions">{t('versionsTitle')}</h2>
      <FailureLine failure={failure} />
      {data && versions.length === 0 && <p class="soft">{t('versionsNone')}</p>}
      <ul class="words">
        {versions.map((version) => (
          <li key={version.number}>
            <p><b>{t('versionLine', { number: version.number, date: dayShort(today(new Date(version.published_at))), by: version.published_by.display_name })}</b></p>
            <ul {...(version.changes.length > 0 && { lang: 'en' })}>{changeWords(version).map((change) => <li key={change}>{change}</li>)}</ul>
            {version.note && <p class="note soft">{t('versionNote', { note: version.note })}</p>}
          </li>
        ))}
      </ul>
    </section>
  );
}
