import '../editor/editor.css';
import './own.css';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { type Params } from '../../shared/router';
import { failureFrom, type Failure } from '../api/request';
import { Button } from '../form/Button';
import { Form } from '../form/Form';
import { Link } from '../form/Link';
import { failureWords } from '../editor/failure';
import { e } from '../editor/words';
import { ErrorSummary } from '../parts/ErrorSummary';
import { About, Teaching } from './About';
import { readOwn } from './calls';
import { Drawing } from './Drawing';
import { formErrors } from './errors';
import type { Kept } from './kept';
import { emptyForm, emptyRung, formOf, nextVariant, RUNGS_MAX, withLadder, withPoses, withRung } from './model';
import { RungFields } from './RungFields';
import { useOwn } from './useOwn';
import { o } from './words';

export function NewOwnPage() {
  const saved = useMemo<Kept>(() => ({ form: emptyForm(), etag: null }), []);
  return (
    <main class="ed-page own-page">
      <p class="ed-back"><Link to="/exercises">{e('backToLibrary')}</Link></p>
      <h1>{o('newTitle')}</h1>
      <Write code={null} saved={saved} />
    </main>
  );
}

export function EditOwnPage({ params }: { params: Params }) {
  const code = params.code ?? '';
  const [saved, setSaved] = useState<Kept | null>(null);
  const [failure, setFailure] = useState<Failure | null>(null);
  const read = () => {
    setFailure(null);
    readOwn(code).then(({ data, etag }) => setSaved({ form: formOf(data), etag }), (error: unknown) => setFailure(failureFrom(error)));
  };
  useEffect(read, [code]);
  return (
    <main class="ed-page own-page">
      <p class="ed-back"><Link to={`/exercises/${code}`}>{e('backToLibrary')}</Link></p>
      <h1>{saved ? o('editTitle', { name: saved.form.text.name }) : o('loading')}</h1>
      {failure && <p role="alert">{failureWords(failure)} <Button small onClick={read}>{o('tryAgain')}</Button></p>}
      {saved && <Write code={code} saved={saved} />}
    </main>
  );
}

function Write({ code, saved }: { code: string | null; saved: Kept }) {
  const own = useOwn(code, saved);
  const [attempt, setAttempt] = useState(0);
  const found = formErrors(own.form);
  const errors = attempt > 0 ? found : {};
  const part = { form: own.form, errors, edit: own.edit };
  const submit = (event: Event) => {
    event.preventDefault();
    setAttempt(attempt + 1);
    if (Object.keys(found).length === 0) void own.save();
  };
  return (
    <Form onSubmit={submit} noValidate>
      <p>{o('intro')}</p>
      <ErrorSummary errors={errors} attempt={attempt} />
      <About {...part} />
      <Teaching {...part} />
      <Ladder own={own} errors={errors} isSaved={(variant) => code !== null && saved.form.text.ladder.some((rung) => rung.variant === variant)} />
      <Foot own={own} />
    </Form>
  );
}

type OwnState = ReturnType<typeof useOwn>;

function Ladder({ own, errors, isSaved }: { own: OwnState; errors: ReturnType<typeof formErrors>; isSaved: (variant: string) => boolean }) {
  const { form, edit } = own;
  const { ladder } = form.text;
  return (
    <section aria-labelledby="own-ladder">
      <h2 id="own-ladder">{o('ladderHead')}</h2>
      <ol class="own-ladder">
        {ladder.map((rung, at) => (
          <li key={rung.variant}>
            <RungFields
              rung={rung} at={at} errors={errors} onChange={(next, field) => edit((now) => withRung(now, at, next), field)}
              stays={isSaved(rung.variant)} onRemove={ladder.length > 1 ? () => edit((now) => withLadder(now, now.text.ladder.filter((_, i) => i !== at))) : null}
            />
            <Drawing name={`${form.text.name}, ${rung.name}`} of={o('rung', { n: at + 1 })} movement={form.poses[rung.variant]} onSettle={own.settle} onChange={(movement, field) => edit((now) => withPoses(now, rung.variant, movement), field ? `${rung.variant} ${field}` : null)} />
          </li>
        ))}
      </ol>
      {ladder.length < RUNGS_MAX && <Button small onClick={() => edit((now) => withLadder(now, [...now.text.ladder, emptyRung(nextVariant(now.text.ladder))]))}>{o('addRung')}</Button>}
    </section>
  );
}

/** Saving, undo and what is kept stay in reach at the foot of the window. */
function Foot({ own }: { own: OwnState }) {
  const { saving: { busy, failure } } = own;
  const isStale = failure?.kind === 'problem' && failure.problem.status === 412;
  return (
    <div class="own-foot">
      <div role="alert">
        {failure && <p class="error">{isStale ? o('staleText') : failureWords(failure)}{isStale && <> <Button small onClick={() => void own.resolve(true)}>{o('staleMine')}</Button> <Button small onClick={() => void own.resolve(false)}>{o('staleTheirs')}</Button></>}</p>}
      </div>
      <div class="ed-row">
        <Button kind="main" small type="submit">{busy ? o('saving') : o('save')}</Button>
        {own.canUndo && <Button small onClick={own.undo}>{o('undo')}</Button>}
        {own.canRedo && <Button small onClick={own.redo}>{o('redo')}</Button>}
        {own.dirty && <Button small kind="quiet" onClick={own.throwAway}>{o('throwAway')}</Button>}
        <span class="soft" role="status">{own.dirty ? o(own.keeps ? 'keptHere' : 'keptNowhere') : o('nothingToSave')}</span>
      </div>
    </div>
  );
}
