import { useEffect, useRef } from 'preact/hooks';
import { SignIn } from './SignIn';

/**
 * Signing in again over the page one was on. A modal dialog, so that it also lies over any dialog that was open: the page below
 * stays as it was, covered and out of reach.
 */
export function Ended() {
  const element = useRef<HTMLDialogElement>(null);
  const cover = () => element.current?.isConnected && !element.current.open && element.current.showModal();
  useEffect(() => {
    const before = document.activeElement as HTMLElement | null;
    cover();
    element.current?.querySelector<HTMLInputElement>('input[name=email]')?.focus();
    return () => before?.focus();
  }, []);
  return (
    <dialog class="ended desk" ref={element} aria-labelledby="sign-in-title" onCancel={(event) => event.preventDefault()} onClose={cover}>
      <SignIn ended />
    </dialog>
  );
}
