import type { ComponentChildren } from 'preact';
import { Dialog } from '../../shared/Dialog';
import { confirmed } from '../api/confirm';
import { Button } from '../form/Button';
import { FailureLine } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';

interface Props<T> {
  open: boolean;
  title: string;
  button: string;
  onClose: () => void;
  write: () => Promise<T>;
  /** Hears what the write answered. */
  onDone: (answer: T) => void;
  children: ComponentChildren;
}

function Body<T>({ button, onClose, write, onDone, children }: Omit<Props<T>, 'open' | 'title'>) {
  const { busy, failure, run } = useWrite();
  const go = async () => {
    const done = await run(async () => ({ answer: await confirmed(write) }));
    if (!done) return;
    onClose();
    onDone(done.answer);
  };
  return (
    <>
      <p>{children}</p>
      <FailureLine failure={failure} />
      <div class="foot"><Button small kind="main" onClick={() => void go()}>{busy ? t('saving') : button}</Button> <Button small onClick={onClose}>{t('cancel')}</Button></div>
    </>
  );
}

/** Asks before something that cannot be taken back by a tap. */
export function Ask<T>({ open, title, ...rest }: Props<T>) {
  return <Dialog open={open} title={title} onClose={rest.onClose}>{open && <Body<T> {...rest} />}</Dialog>;
}
