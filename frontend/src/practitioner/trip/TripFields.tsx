import { unitOf } from '../../shared/units';
import type { Trip } from '../api/types';
import { Button } from '../form/Button';
import { Field, Select } from '../form/Field';
import { Form } from '../form/Form';
import { ErrorSummary } from '../parts/ErrorSummary';
import { FailureLine } from '../parts/status';
import { t } from '../words';
import { GROUNDS, type Problem } from './form';
import { LegFields, problemWords } from './LegFields';
import type { Editing } from './useTripForm';

const QUANTITY = { distance: 'distance', ascent: 'height', descent: 'height', pack: 'mass', day: null } as const;

/** "legs.1.ascent" as the summary says it: which leg, and what is wanted. */
function summaryLine(name: string, problem: Problem): string {
  const [, at, field = name] = /^legs\.(\d+)\.(\w+)$/.exec(name) ?? [];
  const words = problemWords(problem, QUANTITY[field as keyof typeof QUANTITY]) ?? '';
  return at ? `${t('trpLeg', { n: Number(at) + 1 })}: ${words}` : words;
}

/** A colleague saved first: the choice is the person's. */
const Stale = ({ editing, trip }: { editing: Editing; trip: Trip }) => (
  <div class="summary" role="alert">
    <h2>{t('conflictTitle')}</h2>
    <p>{t('trpStale', { name: trip.saved_by ?? '', n: trip.legs.length })}</p>
    <p class="actions"><Button small kind="main" onClick={() => void editing.saveOver()}>{t('conflictKeepMine')}</Button> <Button small onClick={editing.drop}>{t('conflictTakeTheirs')}</Button></p>
  </div>
);

function Actions({ editing, trip }: { editing: Editing; trip: Trip }) {
  return (
    <p class="actions">
      <Button small onClick={editing.addLeg}>{t('trpAddLeg')}</Button>
      {editing.changed && <Button small kind="main" type="submit">{editing.busy ? t('saving') : t('trpSave')}</Button>}
      {editing.changed && <Button small kind="quiet" onClick={editing.drop}>{t('trpDrop')}</Button>}
      {!editing.changed && trip.legs.length > 0 && <Button small kind="quiet" onClick={() => void editing.remove()}>{t('trpRemove')}</Button>}
    </p>
  );
}

/** The legs and what holds for all of them, to be typed and saved. */
export function TripFields({ editing, trip }: { editing: Editing; trip: Trip }) {
  const { form, problems, change } = editing;
  const errors = Object.fromEntries(Object.entries(problems).map(([name, problem]) => [name, summaryLine(name, problem)]));
  return (
    <section aria-labelledby="legs">
      <h2 id="legs">{t('trpLegs')}</h2>
      <Form noValidate onSubmit={(event) => { event.preventDefault(); void editing.save(); }}>
        <ErrorSummary errors={errors} attempt={editing.attempt} />
        {editing.isStale ? <Stale editing={editing} trip={trip} /> : <FailureLine failure={editing.failure} />}
        {form.legs.length === 0 && <p class="soft">{t('trpNone')}</p>}
        <div class="leg-fields">
          <Field label={t('trpPack')} unit={unitOf('mass')} name="pack" inputMode="decimal" value={form.pack.text} error={problemWords(problems.pack, 'mass')} onInput={(text) => change({ ...form, pack: { ...form.pack, text } })} />
          <Select label={t('trpGround')} value={form.ground} options={GROUNDS.map((value) => ({ value, label: t(`trpGround_${value}`) }))} onChange={(ground) => change({ ...form, ground })} />
        </div>
        {form.legs.map((leg, at) => <LegFields key={at} at={at} leg={leg} problems={problems} onRemove={() => editing.removeLeg(at)} onChange={(next) => change({ ...form, legs: form.legs.map((one, i) => (i === at ? next : one)) })} />)}
        <Actions editing={editing} trip={trip} />
      </Form>
    </section>
  );
}
