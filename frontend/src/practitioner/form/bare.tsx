/** Controls without label or look, for what the fields of this folder do not fit. Whoever may not use them finds them disabled, which reads as text. */
import type { JSX } from 'preact';
import { useMay } from '../rights/Needs';

type Of<Tag extends 'input' | 'select' | 'textarea' | 'button'> = JSX.IntrinsicElements[Tag];

export const Input = (props: Of<'input'>) => <input {...props} disabled={!useMay()} />;
export const Options = (props: Of<'select'>) => <select {...props} disabled={!useMay()} />;
export const Area = (props: Of<'textarea'>) => <textarea {...props} disabled={!useMay()} />;
/** Absent instead: a button has nothing to say but what it does. */
export const Press = (props: Of<'button'>) => (useMay() ? <button {...props} /> : null);
