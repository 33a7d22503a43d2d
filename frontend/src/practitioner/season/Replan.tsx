import { useState } from 'preact/hooks';
import { addDays, fullDate, isLocalDate } from '../../shared/dates';
import { query } from '../../shared/router';
import { Button } from '../form/Button';
import { Choices } from '../form/Choices';
import { DateBox } from '../editor/TextBox';
import { FailureLine } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';
import type { Desk } from './desk';
import { walkWords } from './phrases';
import { PAUSES, type Pause } from './types';

const wanted = (): Pause | null => PAUSES.find((pause) => pause === query.value.get('pause')) ?? null;
function sinceWanted(): string | null {
  const since = query.value.get('since');
  return since && isLocalDate(since) ? since : null;
}
/** House: a fortnight, the usual length of what is asked for. */
const PAUSE_DAYS_START = 14;

/** After a pause: why, since when, from when on again; the rest is planned anew in one step that can be taken back. */
export function Replan({ desk }: { desk: Desk }) {
  const [reason, setReason] = useState<Pause>(wanted() ?? 'illness');
  const [since, setSince] = useState(sinceWanted() ?? addDays(desk.today, -PAUSE_DAYS_START));
  const [resumeOn, setResumeOn] = useState(addDays(desk.today, 1));
  const write = useWrite();
  const go = async () => {
    const found = await write.run(() => desk.resume({ reason, since, resume_on: resumeOn }));
    if (!found) return;
    const { season, before, keeps_percent } = found;
    desk.said.value = { text: t('seaReplanned', { date: fullDate(season.starts_on), percent: keeps_percent, before: walkWords(before), walk: walkWords(season.walking) }), canUndo: true };
  };
  const { paused } = desk.plan.value;
  return (
    <details class="sea-part" id="replan" open={wanted() !== null}>
      <summary>{t('seaReplan')}</summary>
      {paused && <p>{t('seaPausedLine', { date: fullDate(paused.resume_on), reason: t(`seaPause_${paused.reason}`) })}</p>}
      <p>{t('seaReplanText')}</p>
      <Choices legend={t('seaReason')} options={PAUSES.map((value) => ({ value, label: t(`seaPause_${value}`) }))} value={reason} onChange={setReason} />
      <p class="urgent">{t(`seaCare_${reason}`)}</p>
      <div class="ed-fields">
        <DateBox id="sea-since" label={t('seaSince')} value={since} onChange={(date) => date && setSince(date)} />
        <DateBox id="sea-resume-on" label={t('seaResumeOn')} value={resumeOn} onChange={(date) => date && setResumeOn(date)} />
      </div>
      <FailureLine failure={write.failure} />
      <p><Button kind="main" onClick={() => void go()}>{t('seaReplanGo')}</Button></p>
    </details>
  );
}
