import '../editor/editor.css';
import './season.css';
import { useEffect, useState } from 'preact/hooks';
import { type Params } from '../../shared/router';
import { failureFrom, type Failure } from '../api/request';
import { Button } from '../form/Button';
import { Link } from '../form/Link';
import { useUndoKeys } from '../editor/useUndoKeys';
import { failureWords } from '../parts/failureWords';
import { ReadFailure } from '../parts/status';
import { Doing, Looking } from '../rights/Needs';
import { t } from '../words';
import { Compare } from './Compare';
import type { Desk } from './desk';
import { From } from './From';
import { loadDesk } from './load';
import { Outlook } from './Outlook';
import { Replan } from './Replan';
import { TakeOver } from './TakeOver';
import { Weeks } from './Weeks';

/** The weeks up to a trip: planned, moved, planned again, taken into the draft. */
export function SeasonPage({ params }: { params: Params }) {
  const id = params.id ?? '';
  const [desk, failure, again] = useDesk(id);
  const name = desk?.program.client.display_name;
  return (
    <main class="form-page sea-page">
      <h1>{name ? t('seaTitleOf', { name }) : t('seaTitle')}</h1>
      <p><Link to={`/clients/${id}`}>{name ? t('backToPerson', { name }) : t('personTitle')}</Link></p>
      <ReadFailure failure={failure} asOf={null} onRetry={again} />
      {desk ? <Body desk={desk} /> : !failure && <p role="status">{t('loading')}</p>}
    </main>
  );
}

function Body({ desk }: { desk: Desk }) {
  useUndoKeys(desk);
  const proposed = desk.proposed.value;
  return (
    <>
      <Doing><p>{t('seaIntro')}</p></Doing>
      <p class="urgent">{t('seaCaution')}</p>
      <details class="sea-part" open={desk.start.season === null}>
        <summary>{t('seaFrom')}</summary>
        <From desk={desk} />
      </details>
      <Doing><Replan desk={desk} /></Doing>
      <Said desk={desk} />
      {proposed && <Outlook desk={desk} season={proposed.season} />}
      {proposed && <Weeks desk={desk} weeks={proposed.season.weeks} />}
      {proposed && <Compare desk={desk} season={proposed.season} />}
      <Doing><TakeOver desk={desk} /></Doing>
    </>
  );
}

/** Whether the plan fits, what was just done, and the way back; it stays in view. */
function Said({ desk }: { desk: Desk }) {
  const { text, canUndo } = desk.said.value;
  const weeks = desk.proposed.value?.season.weeks.length ?? 0;
  const status = desk.failure.value ? '' : !desk.isFresh.value ? t('seaPlanning') : text || t('seaPlanned', { n: weeks });
  return (
    <div class="ed-said sea-said">
      <p role="status">{text || status} {desk.canUndo.value && <small>{t('seaUnsaved')}</small>}</p>
      <Doing><span class="ed-row">
        <Button small kind={canUndo ? 'other' : 'quiet'} aria-label={desk.canUndo.value ? t('seaUndo') : t('seaUndoNothing')} onClick={desk.undo}>{t('seaUndo')}</Button>
        <Button small kind="quiet" aria-label={desk.canRedo.value ? t('seaRedo') : t('seaRedoNothing')} onClick={desk.redo}>{t('seaRedo')}</Button>
      </span></Doing>
      <NotPlanned desk={desk} />
    </div>
  );
}

const choicesOf = (failure: Failure): readonly string[] => (failure.kind === 'problem' ? ((failure.problem as { choices?: readonly string[] }).choices ?? []) : []);

/** Why there is no plan for what is asked; by how much, and what would help. */
function NotPlanned({ desk }: { desk: Desk }) {
  const failure = desk.failure.value;
  const isRefused = failure?.kind === 'problem';
  return (
    <div role="alert">
      {failure && (
        <>
          <p class="error" lang={isRefused ? 'en' : undefined}>{failureWords(failure)}</p>
          {choicesOf(failure).length > 0 && <p>{t('seaChoices')} <span lang="en">{choicesOf(failure).join('; ')}.</span></p>}
          <p>{desk.proposed.value && t('seaStale')} {!isRefused && <Looking><Button small kind="quiet" onClick={desk.askAgain}>{t('tryAgain')}</Button></Looking>}</p>
        </>
      )}
    </div>
  );
}

function useDesk(id: string): [Desk | null, Failure | null, () => void] {
  const [desk, setDesk] = useState<Desk | null>(null);
  const [failure, setFailure] = useState<Failure | null>(null);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    let here = true;
    setFailure(null);
    loadDesk(id).then(
      (loaded) => here && setDesk(loaded),
      (error: unknown) => here && setFailure(failureFrom(error)),
    );
    return () => void (here = false);
  }, [id, turn]);
  useEffect(() => desk?.run(), [desk]);
  return [desk, failure, () => setTurn(turn + 1)];
}
