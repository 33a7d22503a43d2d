import { useEffect, useState } from 'preact/hooks';
import { draftKey, questions, record, type Question } from '../../outbox';
import { Button } from '../../shared/form/Button';
import { Choices } from '../../shared/form/Choices';
import { Arrow } from '../../shared/marks/marks';
import { bodyOf, type Answers, type Said } from '../care/screening';
import { Trouble } from '../parts/Kept';
import { BackLink, Screen } from '../parts/Screen';
import { EmergencyText, RedFlags } from '../parts/Urgent';
import { useDraft } from '../parts/useDraft';
import { firstName, screening } from '../phone';
import { attempt } from '../session/actions';
import { language } from '../../shared/words/mechanism';
import { t } from '../words';
import { QUESTIONS_DE } from '../words/de/questions';
import { Result } from './health/Result';
import { Send } from './me/OnThisPhone';

const DRAFT = 'health';
interface HealthDraft {
  /** 0: not begun; 1 is the first question; after the last one comes how hard it will be. */
  at: number;
  said: Said;
  intensity: Answers['intensity'] | null;
}
const EMPTY: HealthDraft = { at: 0, said: {}, intensity: null };
type Change = (part: Partial<HealthDraft>) => void;

/** Before the first question; and, without a signal since pairing, instead of it. */
function Intro({ change }: { change: Change }) {
  const ready = questions.value.length > 0;
  return (
    <Screen
      title={t('healthTitle')}
      where={<BackLink to="/me">{t('me')}</BackLink>}
      foot={ready && <Button kind="main" wide onClick={() => change({ at: 1 })}>{t('begin')} <Arrow /></Button>}
    >
      <RedFlags />
      <p>{t('healthWhy', { practitioner: firstName.value })}</p>
      <p>{t('healthNot')}</p>
      {!ready && <div class="block"><p>{t('healthFetch')}</p><Send /></div>}
      <div class="block"><EmergencyText /></div>
    </Screen>
  );
}

const Back = ({ at, change }: { at: number; change: Change }) => (
  <p class="centered"><Button kind="quiet" onClick={() => change({ at: at - 1 })}>{t('healthBack')}</Button></p>
);

/** A question in the language shown. */
function wordsOf({ code, question, help }: Question): readonly [string, string] {
  return (language.value === 'de' && QUESTIONS_DE[code]) || [question, help];
}

const yesOrNo = () => [{ value: 'yes', label: t('yes') }, { value: 'no', label: t('no') }] as const;

function Ask({ one, draft, change }: { one: Question; draft: HealthDraft; change: Change }) {
  const [tried, setTried] = useState(false);
  const { at, said } = draft;
  const answer = said[one.code];
  const [question, help] = wordsOf(one);
  const next = () => (answer === undefined ? setTried(true) : change({ at: at + 1 }));
  return (
    <Screen
      title={question}
      where={<><BackLink to="/me">{t('me')}</BackLink><span>{t('stepOf', { step: at, all: questions.value.length + 1 })}</span></>}
      foot={<Button kind="main" wide onClick={next}>{t('nextStep')} <Arrow /></Button>}
    >
      <p>{help}</p>
      <div class="yes-no">
        <Choices
          legend={question} hideLegend options={yesOrNo()} value={answer === undefined ? null : answer ? 'yes' : 'no'}
          error={tried && answer === undefined ? t('healthMissing') : null}
          onChange={(to) => change({ said: { ...said, [one.code]: to === 'yes' } })}
        />
      </div>
      {answer && one.maps_to === 'signs_or_symptoms' && <RedFlags />}
      <Back at={at} change={change} />
    </Screen>
  );
}

function HowHard({ draft, change, done }: { draft: HealthDraft; change: Change; done: () => void }) {
  const [tried, setTried] = useState(false);
  const { at, said, intensity } = draft;
  const body = bodyOf(questions.value, said, intensity);
  const save = async () => {
    setTried(true);
    if (body && (await attempt(() => record('screening_answered', body, { [draftKey(DRAFT)]: undefined })))) done();
  };
  return (
    <Screen
      title={t('healthHard')}
      where={<><BackLink to="/me">{t('me')}</BackLink><span>{t('stepOf', { step: at, all: questions.value.length + 1 })}</span></>}
      foot={<><Trouble /><Button kind="main" wide onClick={() => void save()}>{t('savePain')}</Button></>}
    >
      <p>{t('healthHardHelp')}</p>
      <div class="yes-no">
        <Choices
          legend={t('healthHard')} hideLegend value={intensity} error={tried && !body ? t('healthMissing') : null}
          options={[{ value: 'light_to_moderate', label: t('healthLight') }, { value: 'vigorous', label: t('healthVigorous') }]}
          onChange={(to) => change({ intensity: to })}
        />
      </div>
      <Back at={at} change={change} />
    </Screen>
  );
}

/** The health questions, one a screen; what was answered stays when one goes back or closes the app. */
export function Health() {
  const [draft, change] = useDraft<HealthDraft>(DRAFT, EMPTY);
  useEffect(() => scrollTo(0, 0), [draft?.at]); // each question is read from its beginning
  if (!draft) return null;
  const asked = questions.value;
  const at = Math.min(draft.at, asked.length + 1);
  const last = screening.value;
  if (at > 0 && asked.length > 0) {
    const one = asked[at - 1];
    return one ? <Ask key={one.code} one={one} draft={{ ...draft, at }} change={change} /> : <HowHard draft={{ ...draft, at }} change={change} done={() => change(EMPTY)} />;
  }
  return last ? <Result event={last} again={() => change({ ...EMPTY, at: 1 })} /> : <Intro change={change} />;
}
