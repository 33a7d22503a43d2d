import type { ComponentProps } from 'preact';
import { ButtonLink as AnyButtonLink } from '../../shared/form/Button';
import { Link as AnyLink } from '../../shared/router';
import { mayOpen } from '../rights/rights';

/** A link to a page of the desk; absent for whoever that page is closed to. */
export function Link(props: ComponentProps<typeof AnyLink>) {
  return mayOpen(props.to) ? <AnyLink {...props} /> : null;
}

export function ButtonLink(props: ComponentProps<typeof AnyButtonLink>) {
  return mayOpen(props.to) ? <AnyButtonLink {...props} /> : null;
}
