import type { ComponentProps } from 'preact';
import { Button as AnyButton } from '../../shared/form/Button';
import { useMay } from '../rights/Needs';

export { ButtonLink } from './Link';

/** A button; absent for whoever may not do what the buttons here do. */
export function Button(props: ComponentProps<typeof AnyButton>) {
  return useMay() ? <AnyButton {...props} /> : null;
}
