import { useEffect, useRef, useState } from 'preact/hooks';
import { drawingUrl, drawnAs } from '../../../shared/drawing';
import { figureMoves } from '../../prefs';
import type { Variant } from '../../session/library';
import { t } from '../../words';

/** Whether any of it is on the screen: what nobody sees need not move. */
function useInView(): [{ current: HTMLDivElement | null }, boolean] {
  const box = useRef<HTMLDivElement>(null);
  const [seen, setSeen] = useState(true);
  useEffect(() => {
    if (!box.current || !('IntersectionObserver' in globalThis)) return;
    const watch = new IntersectionObserver((entries) => setSeen(entries.some((entry) => entry.isIntersecting)));
    watch.observe(box.current);
    return () => watch.disconnect();
  }, []);
  return [box, seen];
}

interface DrawingProps {
  exercise: { code: string; name: string; own?: { drawing: string } | null };
  variant: Variant;
}

/**
 * The movement drawn; it moves until it is held still. A phone that asks for less motion gets the still drawing and no button.
 * What a program says of its movements is as old as the program: whether there is a drawing is seen when it is asked for.
 */
export function Drawing({ exercise, variant }: DrawingProps) {
  const [box, seen] = useInView();
  const [failed, setFailed] = useState(false);
  const moves = figureMoves.value;
  if (failed) return null;
  const still = drawingUrl(drawnAs(exercise), variant.variant, 'still');
  return (
    <div class="drawing" ref={box}>
      <picture>
        <source media="(prefers-reduced-motion: reduce)" srcset={still} />
        <img
          src={moves && seen ? drawingUrl(drawnAs(exercise), variant.variant, 'moving') : still}
          alt={t('drawingOf', { exercise: exercise.name, variant: variant.name })}
          onError={() => setFailed(true)}
        />
      </picture>
      <button type="button" class="link" onClick={() => (figureMoves.value = !moves)}>{t(moves ? 'holdStill' : 'letMove')}</button>
    </div>
  );
}
