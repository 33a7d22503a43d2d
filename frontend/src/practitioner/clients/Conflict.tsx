import { useEffect, useRef } from 'preact/hooks';
import type { Client } from '../api/types';
import { Button } from '../form/Button';
import { t } from '../words';
import { differences, LABELS, type ClientForm } from './fields';

interface Props {
  theirs: Client;
  mine: ClientForm;
  onMine: () => void;
  onTheirs: () => void;
}

/** A colleague saved first: both versions field by field, and the choice is the person's. */
export function Conflict({ theirs, mine, onMine, onTheirs }: Props) {
  const element = useRef<HTMLDivElement>(null);
  useEffect(() => element.current?.focus(), []);
  const found = differences(theirs, mine);
  return (
    <div class="summary" role="alert" tabIndex={-1} ref={element}>
      <h2>{t('conflictTitle')}</h2>
      <p>{found.length > 0 ? t('conflictText') : t('conflictNothing')}</p>
      <ul>{found.map(({ field, theirs: other, yours }) => <li key={field}>{t('conflictField', { field: t(LABELS[field]), theirs: other, yours })}</li>)}</ul>
      <p class="actions">
        <Button small kind="main" onClick={onMine}>{t('conflictKeepMine')}</Button>
        <Button small onClick={onTheirs}>{t('conflictTakeTheirs')}</Button>
      </p>
    </div>
  );
}
