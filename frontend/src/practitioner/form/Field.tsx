import type { ComponentProps } from 'preact';
import { Field as AnyField, Select as AnySelect } from '../../shared/form/Field';
import { useMay } from '../rights/Needs';
import { Shown, ShownDay } from './Shown';

/** One labelled field; for whoever may not change it, what stands in it. */
export function Field(props: ComponentProps<typeof AnyField>) {
  const { label, value, unit, type } = props;
  if (useMay()) return <AnyField {...props} />;
  return type === 'date' ? <ShownDay label={label} value={value} /> : <Shown label={label} value={value} unit={unit} />;
}

type SelectProps<V extends string> = Parameters<typeof AnySelect<V>>[0];

export function Select<V extends string>(props: SelectProps<V>) {
  const { label, options, value } = props;
  if (useMay()) return <AnySelect<V> {...props} />;
  return <Shown label={label} value={options.find((one) => one.value === value)?.label ?? ''} />;
}
