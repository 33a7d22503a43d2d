import { useState } from 'preact/hooks';
import { dayShort } from '../../shared/dates';
import { useResource } from '../api/resource';
import type { Client, Screening, ScreeningList, ScreeningQuestions } from '../api/types';
import { Button } from '../form/Button';
import { Link } from '../form/Link';
import { ReadFailure } from '../parts/status';
import { shortCitation } from '../person/answers';
import { Doing } from '../rights/Needs';
import { t } from '../words';
import { ClearanceForm } from './ClearanceForm';
import { Questions } from './Questions';

const NAMES = { clear: 'clear', clearance_recommended: 'clearance_recommended', clearance_required: 'clearance_required', cleared: 'cleared', not_screened: 'not_screened' } as const;

function One({ one, questions }: { one: Screening; questions: ScreeningQuestions }) {
  const day = dayShort(one.local_day);
  const yes = questions.items.filter(({ code }) => one.details.includes(code)).map(({ question }) => question);
  return (
    <li>
      <p><b>{t(`scrOutcome_${one.outcome}`)}</b> <span class="soft">{one.answered_by ? t('scrByPractitioner', { day, name: one.answered_by }) : t('scrByClient', { day })}</span></p>
      <ul class="evidence" lang="en">{one.reasons.map(({ text }) => <li key={text}>{text}</li>)}</ul>
      {yes.length > 0 && <p class="note">{t('scrYesTo', { questions: yes.join(' ') })}</p>}
      <p class="note soft">{t('scrIntensity')} {t(`scr_${one.answers.intensity}`)}. {t('scrFollows', { source: shortCitation(one.source_work) })}</p>
      {one.cleared && <p class="note">{t('scrClearedLine', { day: dayShort(one.cleared.given_on), by: one.cleared.given_by, name: one.cleared.recorded_by })} {one.cleared.note}</p>}
    </li>
  );
}

function Body({ client, list, questions }: { client: string; list: ScreeningList; questions: ScreeningQuestions }) {
  const [again, setAgain] = useState(false);
  const asks = list.state === 'clearance_required' || list.state === 'clearance_recommended';
  const ask = again || list.items.length === 0;
  return (
    <>
      <p role="status"><b class={list.state === 'clearance_required' ? 'call' : ''}>{t(`scrState_${NAMES[list.state]}`)}</b></p>
      {asks && !again && <Doing><ClearanceForm client={client} /></Doing>}
      <Doing><section aria-labelledby="questions">
        <h2 id="questions">{t('scrQuestions')}</h2>
        {ask ? <Questions client={client} questions={questions} onSaved={() => setAgain(false)} /> : <Button small onClick={() => setAgain(true)}>{t('scrAgain')}</Button>}
      </section></Doing>
      <section aria-labelledby="history">
        <h2 id="history">{t('scrHistory')}</h2>
        {list.items.length === 0 ? <p class="soft">{t('scrNone')}</p> : <ul class="words">{list.items.map((one) => <One key={one.id} one={one} questions={questions} />)}</ul>}
      </section>
    </>
  );
}

/** Questions before a program, their outcome, and the clearance that it asks for. */
export function ScreeningPage({ params }: { params: Record<string, string> }) {
  const id = params.id ?? '';
  const at = `/clients/${encodeURIComponent(id)}`;
  const client = useResource<Client>(at, id);
  const list = useResource<ScreeningList>(`${at}/screenings`, id);
  const questions = useResource<ScreeningQuestions>('/screening/questions');
  const name = client.data?.display_name;
  const failure = client.failure ?? list.failure ?? questions.failure;
  const retry = () => void Promise.all([client.reload(), list.reload(), questions.reload()]);
  return (
    <main class="form-page screening">
      <h1>{name ? t('scrTitleOf', { name }) : t('scrTitle')}</h1>
      <p><Link to={`/clients/${id}`}>{name ? t('backToPerson', { name }) : t('personTitle')}</Link></p>
      <p class="urgent">{t('scrIntro')}</p>
      <ReadFailure failure={failure} asOf={list.asOf} onRetry={retry} />
      {list.data && questions.data ? <Body client={id} list={list.data} questions={questions.data} /> : !failure && <p role="status">{t('loading')}</p>}
    </main>
  );
}
