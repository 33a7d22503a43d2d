import type { ComponentChildren } from 'preact';
import { Link } from '../router';

/** main: the one next step. other: the alternative. hurt: only "It hurts". quiet: looks like a link. */
export type ButtonKind = 'main' | 'other' | 'hurt' | 'quiet';

interface Look {
  kind?: ButtonKind | undefined;
  wide?: boolean | undefined;
  small?: boolean | undefined;
  children: ComponentChildren;
}
interface ButtonProps extends Look {
  onClick?: () => void;
  type?: 'button' | 'submit';
  id?: string;
  'aria-label'?: string;
  'aria-expanded'?: boolean;
  'aria-pressed'?: boolean;
  'aria-disabled'?: boolean;
}

const look = ({ kind = 'other', wide, small }: Omit<Look, 'children'>) => `btn ${kind} ${wide ? 'wide' : ''} ${small ? 'small' : ''}`;

/** Never disabled: say why instead. */
export function Button({ kind, wide, small, children, type = 'button', ...rest }: ButtonProps) {
  return (
    <button {...rest} type={type} class={look({ kind, wide, small })}>
      {children}
    </button>
  );
}

export function ButtonLink({ kind, wide, small, children, to }: Look & { to: string }) {
  return (
    <Link to={to} class={look({ kind, wide, small })}>
      {children}
    </Link>
  );
}
