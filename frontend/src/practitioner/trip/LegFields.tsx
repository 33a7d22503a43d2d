import { distance, height, mass, unitOf, type Quantity } from '../../shared/units';
import { Button } from '../form/Button';
import { Field } from '../form/Field';
import { t } from '../words';
import { MOST, type LegForm, type Problem, type Problems } from './form';

const SHOW = { distance, height, mass } as const;

export function problemWords(problem: Problem | undefined, quantity: Quantity | null): string | null {
  if (!problem) return null;
  if (problem === 'too_much') return t('trpTooMuch', { most: SHOW[quantity ?? 'mass'](MOST[quantity ?? 'mass']) });
  if (problem === 'missing') return t(quantity === null ? 'trpDayOdd' : 'trpNumberOdd');
  return t(`trpProblem_${problem}`);
}

interface Props { at: number; leg: LegForm; problems: Problems; onChange: (leg: LegForm) => void; onRemove: () => void }

const COLUMNS = [['distance', 'distance', 'trpDistance'], ['ascent', 'height', 'trpAscent'], ['descent', 'height', 'trpDescent'], ['pack', 'mass', 'trpPackLeg']] as const;

/** What a file said stands as it is: typing over it makes it a typed leg, without its profile. */
function Said({ leg, onTyped }: { leg: LegForm; onTyped: () => void }) {
  const up = leg.ascent.si === null ? t('trpHeightsUnknown') : t('trpUpDown', { up: height(leg.ascent.si), down: height(leg.descent.si ?? 0) });
  return <p class="leg-said">{t('trpFromFile', { distance: distance(leg.distance.si ?? 0), heights: up })} <Button small kind="quiet" onClick={onTyped}>{t('trpTypeInstead')}</Button></p>;
}

/** One leg: its day and name, and its numbers, typed or as a file said them. */
export function LegFields({ at, leg, problems, onChange, onRemove }: Props) {
  const name = `legs.${at}`;
  const columns = COLUMNS.filter(([field]) => !leg.file || field === 'pack');
  return (
    <fieldset class="leg">
      <legend>{t('trpLeg', { n: at + 1 })}</legend>
      <div class="leg-fields">
        <Field label={t('trpDay')} name={`${name}.day`} inputMode="numeric" value={leg.day} error={problemWords(problems[`${name}.day`], null)} onInput={(day) => onChange({ ...leg, day })} />
        <Field label={t('trpName')} value={leg.name} onInput={(text) => onChange({ ...leg, name: text.slice(0, 120) })} />
        {columns.map(([field, quantity, label]) => (
          <Field key={field} label={t(label)} unit={unitOf(quantity)} name={`${name}.${field}`} inputMode="decimal" value={leg[field].text} error={problemWords(problems[`${name}.${field}`], quantity)} onInput={(text) => onChange({ ...leg, [field]: { ...leg[field], text } })} />
        ))}
      </div>
      {leg.file && <Said leg={leg} onTyped={() => onChange({ ...leg, file: null })} />}
      <p><Button small kind="quiet" onClick={onRemove} aria-label={t('trpRemoveLegN', { n: at + 1 })}>{t('trpRemoveLeg')}</Button></p>
    </fieldset>
  );
}
