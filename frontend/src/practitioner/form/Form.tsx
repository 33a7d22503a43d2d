import type { ComponentChildren, JSX } from 'preact';
import { useMay } from '../rights/Needs';

type FormProps = JSX.IntrinsicElements['form'] & {
  /** It holds what is stored already, which whoever may not change it reads as text. Without it the form is absent for them. */
  shows?: boolean;
  children?: ComponentChildren;
};

/** A form, for whoever may send it. */
export function Form({ shows, ...props }: FormProps) {
  if (useMay()) return <form {...props} />;
  return shows ? <div class="reading">{props.children}</div> : null;
}
