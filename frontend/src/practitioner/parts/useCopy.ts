import { useState } from 'preact/hooks';

/** Copies a text for somebody to paste elsewhere. A browser may refuse it: `onRefused` then helps a person to do it by hand. */
export function useCopy(text: string, words: { copied: string; refused: string }, onRefused: () => void = () => undefined) {
  const [told, setTold] = useState('');
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setTold(words.copied);
    } catch {
      onRefused();
      setTold(words.refused);
    }
  };
  return { told, copy };
}
