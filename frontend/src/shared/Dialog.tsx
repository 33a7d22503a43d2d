import type { ComponentChildren } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';

interface DialogProps {
  open: boolean;
  title: string;
  /** Called for Escape and for a close from the page; the caller then sets `open` to false. */
  onClose: () => void;
  children: ComponentChildren;
}

/** The browser's own modal dialog: it keeps the focus inside, and gives it back. Buttons go into an element of class `foot`. */
export function Dialog({ open, title, onClose, children }: DialogProps) {
  const element = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const dialog = element.current;
    if (!dialog || dialog.open === open) return;
    if (open) dialog.showModal();
    else dialog.close();
  }, [open]);
  return (
    <dialog ref={element} aria-labelledby={id} onClose={() => open && onClose()}>
      <h2 id={id}>{title}</h2>
      {open && children}
    </dialog>
  );
}
