import { useRef, useState } from 'preact/hooks';
import { Button } from '../form/Button';
import { Select } from '../form/Field';
import type { Entry } from '../exercises/entry';
import { variantOf } from '../exercises/entry';
import { t } from '../words';
import { PICKS_MAX, type Pick } from './sheet';

interface PicksProps {
  picks: readonly Pick[];
  entries: readonly Entry[];
  error: string | null;
  onChange: (picks: readonly Pick[]) => void;
}

/** The movements of a class sheet, in the order of the sheet. */
export function Picks({ picks, entries, error, onChange }: PicksProps) {
  const [told, setTold] = useState(''); // said in here: what lies behind an open dialog is not heard
  const heading = useRef<HTMLLegendElement>(null);
  const nameOf = (pick: Pick) => entries.find(({ code }) => code === pick.exercise)?.name ?? pick.exercise;
  const remove = (place: number) => {
    setTold(t('classRemoved', { name: nameOf(picks[place] as Pick) }));
    onChange(picks.filter((_, at) => at !== place));
    heading.current?.focus(); // the button that was pressed is gone
  };
  const change = (place: number, variant: string) => onChange(picks.map((pick, at) => (at === place ? { ...pick, variant } : pick)));
  return (
    <fieldset aria-describedby={error ? 'picks-error' : undefined}>
      <legend ref={heading} tabIndex={-1}>{t('classMovements')}</legend>
      {picks.length === 0 && !error && <p class="soft">{t('classNone')}</p>}
      {error && <p class="error" id="picks-error">{error}</p>}
      <ol class="sheet-picks">
        {picks.map((pick, place) => (
          <li key={`${place}.${pick.exercise}`}>
            <Rung pick={pick} entry={entries.find(({ code }) => code === pick.exercise)} onChange={(variant) => change(place, variant)} />
            <Button small kind="quiet" aria-label={t('classRemoveNamed', { name: nameOf(pick) })} onClick={() => remove(place)}>{t('classRemove')}</Button>
          </li>
        ))}
      </ol>
      {picks.length < PICKS_MAX ? <Add entries={entries} onAdd={(pick) => { setTold(t('classAdded', { name: nameOf(pick) })); onChange([...picks, pick]); }} /> : <p>{t('classFull', { n: PICKS_MAX })}</p>}
      <p role="status" class="sr">{told}</p>
    </fieldset>
  );
}

function Rung({ pick, entry, onChange }: { pick: Pick; entry: Entry | undefined; onChange: (variant: string) => void }) {
  const options = (entry?.ladder ?? []).map(({ variant, name }) => ({ value: variant, label: name }));
  const now = variantOf(entry, pick.variant)?.variant ?? pick.variant;
  return <Select label={t('classHow', { name: entry?.name ?? pick.exercise })} value={now} options={options} onChange={onChange} />;
}

function Add({ entries, onAdd }: { entries: readonly Entry[]; onAdd: (pick: Pick) => void }) {
  const [code, setCode] = useState(entries[0]?.code ?? '');
  const add = () => {
    const easiest = entries.find((entry) => entry.code === code)?.ladder[0];
    if (easiest) onAdd({ exercise: code, variant: easiest.variant });
  };
  return (
    <>
      <Select label={t('classPick')} value={code} onChange={setCode} options={entries.map((entry) => ({ value: entry.code, label: entry.name }))} />
      <Button small onClick={add}>{t('classAdd')}</Button>
    </>
  );
}
