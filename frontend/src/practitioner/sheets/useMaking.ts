import { useEffect, useState } from 'preact/hooks';
import { useWrite } from '../parts/useWrite';

/** A PDF that was made, with an address for as long as its dialog is open. */
export interface Made {
  name: string;
  url: string;
}

/** Puts a file among the browser's downloads. A new tab would be stopped as unasked for, since the file comes later than the click. */
function save({ name, url }: Made): void {
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
}

/** Makes one PDF at a time and saves it; what was made before is let go. */
export function useMaking() {
  const { busy, failure, run } = useWrite();
  const [made, setMade] = useState<Made | null>(null);
  useEffect(() => () => { if (made) URL.revokeObjectURL(made.url); }, [made]);
  const make = async (ask: () => Promise<File>) => {
    setMade(null);
    const file = await run(ask);
    if (!file) return;
    const next = { name: file.name, url: URL.createObjectURL(file) };
    setMade(next);
    save(next);
  };
  return { busy, failure, made, make };
}
