import { dayShort } from '../../../shared/dates';
import type { Suggestion } from '../../api/types';
import { Citation } from '../../sources/Citation';
import { t } from '../../words';
import { wantedDay } from '../lookAt';

const KINDS = { published: 'rulePublished', derived: 'ruleDerived', house: 'ruleHouse' } as const;

function Reasons({ reasons }: Pick<Suggestion, 'reasons'>) {
  return (
    <ul class="evidence">
      {reasons.map(({ text, event_id, day }) => (
        <li key={text + event_id}>
          <span lang="en">{text}</span>
          {day && <> <a href="#timeline" onClick={(event) => { event.preventDefault(); wantedDay.value = day; }}>{t('sugSeeDay', { day: dayShort(day) })}</a></>}
        </li>
      ))}
    </ul>
  );
}

/** Why it is suggested, by which rule, and what would change it. */
export function Why({ one }: { one: Suggestion }) {
  return (
    <>
      <Reasons reasons={one.reasons} />
      <p class="note soft" lang="en">{one.would_change && <><span lang={document.documentElement.lang}>{t('sugWouldChange')}</span> {one.would_change}</>}</p>
      <div class="rule note soft">{t('ruleLine')} <i>{t(`prog_${one.rule}`)}</i>, {t(KINDS[one.kind])}. <Citation code={one.source} /></div>
    </>
  );
}
