import { useState } from 'preact/hooks';
import { dayShort } from '../../shared/dates';
import { parseNumber } from '../../shared/numbers';
import { rateActivities, withdrawRating } from '../api/calls';
import { draft, dropDraft } from '../api/drafts';
import { refreshAbout } from '../api/resource';
import type { ClientTests } from '../api/types';
import { Button } from '../form/Button';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { ErrorSummary, type FieldErrors } from '../parts/ErrorSummary';
import { FailureLine, say } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { shortCitation } from '../person/answers';
import { t } from '../words';

type FunctionalScale = ClientTests['functional_scale'];
interface Line { name: string; rating: string }
const EMPTY: Line = { name: '', rating: '' };
/** As the server takes them. */
const ACTIVITIES_MAX = 5;
const RATING_MAX = 10;

const isRating = (text: string): boolean => { const n = parseNumber(text); return n !== null && Number.isInteger(n) && n >= 0 && n <= RATING_MAX; };

export function scaleErrors(lines: readonly Line[]): FieldErrors {
  const errors: FieldErrors = {};
  lines.forEach(({ name, rating }, i) => {
    if (!name.trim() && rating.trim()) errors[`activity.${i}`] = t('tstActivityMissing');
    if (name.trim() && !isRating(rating)) errors[`rating.${i}`] = t('tstRatingOdd');
  });
  if (lines.every(({ name, rating }) => !name.trim() && !rating.trim())) errors['activity.0'] = t('tstScaleEmpty');
  return errors;
}

/** The activities of the last time, to be rated again: only the same ones can be compared. */
const startOf = (scale: FunctionalScale): Line[] => scale.items[0]?.activities.map(({ name }) => ({ name, rating: '' })) ?? [EMPTY];

function Body({ client, scale }: { client: string; scale: FunctionalScale }) {
  const kept = draft(`scale.${client}`);
  const lines: Line[] = kept.value ? JSON.parse(kept.value) : startOf(scale);
  const keep = (to: readonly Line[]) => void (kept.value = JSON.stringify(to));
  const set = (i: number, change: Partial<Line>) => keep(lines.map((line, at) => (at === i ? { ...line, ...change } : line)));
  const [attempt, setAttempt] = useState(0);
  const { busy, failure, run } = useWrite();
  const found = scaleErrors(lines);
  const errors = attempt > 0 ? found : {};
  const submit = async (event: Event) => {
    event.preventDefault();
    setAttempt(attempt + 1);
    if (Object.keys(found).length > 0) return;
    const named = lines.filter(({ name }) => name.trim()).map(({ name, rating }) => ({ name: name.trim(), rating: parseNumber(rating) ?? 0 }));
    const saved = await run(async () => [await rateActivities(client, named)]);
    if (!saved) return;
    dropDraft(`scale.${client}`);
    setAttempt(0);
    await refreshAbout(client);
    say(t('tstScaleSaved'));
  };
  return (
    <Form onSubmit={submit} noValidate>
      <ErrorSummary errors={errors} attempt={attempt} />
      {lines.map(({ name, rating }, i) => (
        <div class="rating-row" key={i}>
          <Field label={t('tstActivity', { n: i + 1 })} name={`activity.${i}`} autoComplete="off" value={name} onInput={(text) => set(i, { name: text })} error={errors[`activity.${i}`]} />
          <Field label={t('tstRating', { n: i + 1 })} name={`rating.${i}`} inputMode="numeric" autoComplete="off" value={rating} onInput={(text) => set(i, { rating: text })} error={errors[`rating.${i}`]} />
        </div>
      ))}
      <FailureLine failure={failure} />
      <p class="actions">
        <Button kind="main" small type="submit">{busy ? t('saving') : t('tstScaleSave')}</Button>
        {lines.length < ACTIVITIES_MAX && <Button small onClick={() => keep([...lines, EMPTY])}>{t('tstAddActivity')}</Button>}
      </p>
    </Form>
  );
}

function Rating({ one, client }: { one: FunctionalScale['items'][number]; client: string }) {
  const { failure, run } = useWrite();
  const putBack = () => run(async () => {
    await rateActivities(client, one.activities, one.taken_on);
    await refreshAbout(client);
    say(t('tstBack'));
  });
  const withdraw = () => run(async () => {
    await withdrawRating(one.id);
    await refreshAbout(client);
    say(t('tstRatingBack'), () => void putBack());
  });
  const day = dayShort(one.taken_on);
  return (
    <li>
      <p><b>{t('tstMean', { day, mean: one.mean })}</b>: {one.activities.map(({ name, rating }) => `${name} ${rating}`).join(', ')}</p>
      <Button small kind="quiet" onClick={() => void withdraw()}>{t('tstWithdraw')}<span class="sr">: {day}</span></Button>
      <FailureLine failure={failure} />
    </li>
  );
}

/** What is hard for the client, in their words, rated by them. */
export function Scale({ client, scale }: { client: string; scale: FunctionalScale }) {
  const { change, why_not_compared: why, items, source_work } = scale;
  return (
    <section aria-labelledby="scale">
      <h2 id="scale">{t('tstScale')}</h2>
      <p>{t('tstScaleText', { n: ACTIVITIES_MAX })} <span class="note soft">{shortCitation(source_work)}</span></p>
      {change && <p>{t('tstChange')}: <b>{t(change.is_real ? 'tstReal' : 'tstNotReal')}</b>. <span lang="en">{change.words}</span></p>}
      {why && <p class="note" lang="en">{why}</p>}
      <Body client={client} scale={scale} />
      {items.length === 0 ? <p class="soft">{t('tstScaleNone')}</p> : <ul class="words">{items.map((one) => <Rating key={one.id} one={one} client={client} />)}</ul>}
    </section>
  );
}
