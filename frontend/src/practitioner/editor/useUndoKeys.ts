import { useEffect } from 'preact/hooks';
import { useMay } from '../rights/Needs';

/** Ctrl+Z, Ctrl+Shift+Z and Ctrl+Y (Cmd on a Mac) anywhere on the page, but not behind a dialog. */
export function useUndoKeys(of: { undo: () => void; redo: () => void }): void {
  const may = useMay();
  useEffect(() => {
    if (!may) return;
    const press = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || document.querySelector('dialog[open]')) return;
      const key = event.key.toLowerCase();
      const does = key === 'y' || (key === 'z' && event.shiftKey) ? of.redo : key === 'z' ? of.undo : null;
      if (!does) return;
      event.preventDefault();
      does();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, [of, may]);
}
