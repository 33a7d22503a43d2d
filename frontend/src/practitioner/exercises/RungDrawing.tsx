import { useState } from 'preact/hooks';
import { drawingUrl, drawnAs } from '../../shared/drawing';
import { Button } from '../form/Button';
import { e } from '../editor/words';
import { Looking } from '../rights/Needs';
import type { Entry, Variant } from './entry';

interface RungDrawingProps {
  entry: Entry;
  rung: Variant;
  plays: boolean;
  onPlay: (plays: boolean) => void;
}

/** A rung's drawing: still until it is asked to move. A desk that asks for less motion has no button, since the drawing stays still there. */
export function RungDrawing({ entry, rung, plays, onPlay }: RungDrawingProps) {
  const [failed, setFailed] = useState(false);
  if (failed) return <p class="soft">{e('drawingFailed')}</p>;
  return (
    <div class="ed-figure">
      <img
        loading="lazy"
        src={drawingUrl(drawnAs(entry), rung.variant, plays ? 'moving' : 'still')}
        alt={e('drawingOf', { exercise: entry.name, variant: rung.name })}
        onError={() => setFailed(true)}
      />
      <Looking><Button small onClick={() => onPlay(!plays)}>
        {e(plays ? 'drawingStop' : 'drawingPlay')}<span class="sr"> {rung.name}</span>
      </Button></Looking>
    </div>
  );
}

/** In a list: the easiest rung that is drawn. The name stands beside it, so a screen reader passes it over. */
export function ListDrawing({ entry }: { entry: Entry }) {
  const [failed, setFailed] = useState(false);
  const rung = entry.ladder.find((one) => one.drawn);
  if (!rung || failed) return null;
  return <img class="ed-still" loading="lazy" src={drawingUrl(drawnAs(entry), rung.variant, 'still')} alt="" onError={() => setFailed(true)} />;
}
