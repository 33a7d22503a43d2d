import { Choices as AnyChoices, Several as AnySeveral } from '../../shared/form/Choices';
import { useMay } from '../rights/Needs';
import { Shown } from './Shown';

type ChoicesProps<V extends string> = Parameters<typeof AnyChoices<V>>[0];
type SeveralProps<V extends string> = Parameters<typeof AnySeveral<V>>[0];

const labels = <V extends string>({ options }: Pick<ChoicesProps<V>, 'options'>, chosen: readonly (V | null)[]): string =>
  options.filter(({ value }) => chosen.includes(value)).map(({ label }) => label).join(', ');

/** One of several; for whoever may not choose, what is chosen. */
export function Choices<V extends string>(props: ChoicesProps<V>) {
  return useMay() ? <AnyChoices<V> {...props} /> : <Shown label={props.legend} value={labels(props, [props.value])} />;
}

/** Any of several. */
export function Several<V extends string>(props: SeveralProps<V>) {
  return useMay() ? <AnySeveral<V> {...props} /> : <Shown label={props.legend} value={labels(props, props.value)} />;
}
