import type { ComponentProps } from 'preact';
import { Button as AnyButton } from '../../shared/form/Button';
import { useMay } from '../rights/Needs';

export { ButtonLink } from './Link';

type ButtonProps = ComponentProps<typeof AnyButton> & {
  /** What it does must wait: it says so, keeps the focus, and a press does nothing. Words beside it say what is waited for. */
  busy?: boolean | undefined;
};

/** A button; absent for whoever may not do what the buttons here do. */
export function Button({ busy, ...props }: ButtonProps) {
  if (!useMay()) return null;
  if (!busy) return <AnyButton {...props} />;
  return <AnyButton {...props} type="button" onClick={() => undefined} aria-disabled />;
}
