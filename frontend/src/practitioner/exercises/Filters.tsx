import { s } from '../../shared/words/shared';
import type { Region } from '../../shared/body/places';
import { Select, Field } from '../form/Field';
import { coded, e } from '../editor/words';
import type { Entry } from './entry';
import { qualitiesOf, regionsOf, type Filter } from './filter';

interface FiltersProps {
  entries: readonly Entry[];
  filter: Filter;
  onChange: (filter: Filter) => void;
}

/** Name, quality, spared region: what both the library and the editor search by. */
export function Filters({ entries, filter, onChange }: FiltersProps) {
  const any = { value: '', label: e('anyOf') };
  return (
    <>
      <Field label={e('searchName')} type="search" value={filter.text} onInput={(text) => onChange({ ...filter, text })} />
      <Select label={e('searchTrains')} value={filter.trains} options={[any, ...qualitiesOf(entries).map((code) => ({ value: code, label: coded('quality', code) }))]} onChange={(trains) => onChange({ ...filter, trains })} />
      <Select label={e('searchSpares')} value={filter.spares} options={[any, ...regionsOf(entries).map((code) => ({ value: code, label: s(code as Region) }))]} onChange={(spares) => onChange({ ...filter, spares })} />
    </>
  );
}
