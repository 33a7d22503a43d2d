import { useRef } from 'preact/hooks';
import type { Preview } from './calls';
import type { Change } from './usePreview';
import { named, o } from './words';

/** House: an arrow key moves a joint by so many drawing units, of which a person is 1000 high; with Shift a fifth of it. */
const STEP = 10;
const ARROWS: Readonly<Record<string, readonly [number, number]>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
/** Size of a handle in the drawing's own units, for a stage of about 360 px. */
const SHARE = 0.022;

interface StageProps {
  answer: Preview;
  alt: string;
  /** Sides whose joints can be taken hold of. */
  side: 'L' | 'R';
  moves: boolean;
  onChange: (change: Change) => void;
  onSettle: () => void;
}

export const jointWords = (point: string): string => {
  const [name = '', side] = point.split('.');
  return side ? `${named('joint', name)}, ${o(side === 'R' ? 'right' : 'left')}` : named('joint', name);
};

/** The drawing with a handle on each joint: drag it, or focus it and use the arrow keys. */
export function Stage({ answer, alt, side, moves, onChange, onSettle }: StageProps) {
  const overlay = useRef<SVGSVGElement>(null);
  const held = useRef<string | null>(null);
  const target = useRef<{ point: string; to: [number, number] } | null>(null);
  const [left, top, width, height] = answer.frame;
  const handles = answer.handles.filter(({ point }) => !point.includes('.') || point.endsWith(`.${side}`));
  const radius = SHARE * Math.max(width, height);
  const bring = (point: string, to: [number, number]) => {
    target.current = { point, to };
    onChange({ drag: { point, to } });
  };
  const drag = (event: PointerEvent) => {
    const inverse = overlay.current?.getScreenCTM()?.inverse();
    if (!held.current || !inverse) return;
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(inverse);
    bring(held.current, [x, y]);
  };
  const press = (event: KeyboardEvent, handle: Preview['handles'][number]) => {
    const way = ARROWS[event.key];
    if (!way) return;
    event.preventDefault();
    const step = event.shiftKey ? STEP / 5 : STEP;
    // While answers are on their way, presses add up from where the joint was last sent.
    const from = event.repeat && target.current?.point === handle.point ? target.current.to : ([handle.x, handle.y] as const);
    bring(handle.point, [from[0] + way[0] * step, from[1] + way[1] * step]);
  };
  return (
    <div class="own-stage">
      <img src={`data:image/svg+xml,${encodeURIComponent(answer.svg)}`} alt={alt} />
      {!moves && (
        <svg ref={overlay} viewBox={`${left} ${top} ${width} ${height}`} role="group" aria-label={o('handleHow')} onPointerMove={drag} onPointerUp={() => ((held.current = null), onSettle())} onPointerCancel={() => (held.current = null)}>
          {handles.map((handle) => (
            <g
              key={handle.point} role="button" tabIndex={0} aria-label={o('handleOf', { joint: jointWords(handle.point) })} data-point={handle.point}
              onKeyDown={(event) => press(event, handle)} onBlur={onSettle}
              onPointerDown={(event) => ((held.current = handle.point), event.currentTarget.setPointerCapture(event.pointerId))}
            >
              <circle class="grip" cx={handle.x} cy={handle.y} r={radius * 1.6} />
              <circle class="knob" cx={handle.x} cy={handle.y} r={radius * 0.7} />
            </g>
          ))}
        </svg>
      )}
    </div>
  );
}
