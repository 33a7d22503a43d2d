import { useEffect, useState } from 'preact/hooks';
import { parseQuantity, toShown, unitOf } from '../../shared/units';
import { Field } from '../form/Field';
import { t } from '../words';
import { QUANTITY } from './phrases';
import type { Level } from './types';

type Thing = keyof Level;
/** What the server takes, in km, m and kg. */
const RANGES = { distance_km: [1, 100], ascent_m: [0, 5000], pack_kg: [0, 60] } as const satisfies Record<Thing, readonly [number, number]>;
const LABELS = { distance_km: 'seaKm', ascent_m: 'seaAscent', pack_kg: 'seaPack' } as const satisfies Record<Thing, string>;

/** What was typed in SI; null when it does not fit. */
function fit(thing: Thing, text: string): number | null {
  const si = parseQuantity(QUANTITY[thing], text);
  const value = si !== null && thing === 'ascent_m' ? Math.round(si) : si;
  const [min, max] = RANGES[thing];
  return value === null || value < min || value > max ? null : value;
}

function Measure({ thing, value, onChange }: { thing: Thing; value: number; onChange: (value: number) => void }) {
  const [typed, setTyped] = useState<string | null>(null);
  const quantity = QUANTITY[thing];
  useEffect(() => {
    // Undo or a choice changed it under the typing: show what holds.
    setTyped((text) => (text !== null && fit(thing, text) !== null && fit(thing, text) !== value ? null : text));
  }, [value]);
  const [min, max] = RANGES[thing].map((edge) => toShown(quantity, edge)) as [number, number];
  const type = (text: string) => {
    setTyped(text);
    const read = fit(thing, text);
    if (read !== null && read !== value) onChange(read);
  };
  const error = typed !== null && fit(thing, typed) === null ? t('seaNumber', { min, max, unit: unitOf(quantity) }) : null;
  return <Field label={t(LABELS[thing])} unit={unitOf(quantity)} inputMode="decimal" value={typed ?? String(toShown(quantity, value))} error={error} onInput={type} />;
}

interface MeasuresProps {
  legend: string;
  hint: string;
  level: Level;
  onChange: (level: Level, thing: Thing) => void;
}

/** A walk as three numbers; what does not fit stays as typed and says what is wanted, and the last that fitted holds. */
export function Measures({ legend, hint, level, onChange }: MeasuresProps) {
  return (
    <fieldset class="sea-measures">
      <legend>{legend}</legend>
      <p class="note soft">{hint}</p>
      <div class="ed-fields">
        {(['distance_km', 'ascent_m', 'pack_kg'] as const).map((thing) => (
          <Measure key={thing} thing={thing} value={level[thing]} onChange={(value) => onChange({ ...level, [thing]: value }, thing)} />
        ))}
      </div>
    </fieldset>
  );
}
