import { s } from '../words/shared';
import { HALF, MIDDLE, type Shape } from './outlines';
import { placeWords, type Place } from './places';

interface FigureProps {
  view: 'front' | 'back';
  value: Place | null;
  onPick: (place: Place) => void;
}

function isOn(value: Place | null, place: Place): boolean {
  if (!value || value.region !== place.region) return false;
  // A place chosen from the list as "inner side" or for both sides is still shown where it lies.
  const facing = !value.aspect || !place.aspect || value.aspect === place.aspect || value.aspect === 'inner' || value.aspect === 'outer';
  return facing && (value.side === place.side || (value.side === 'both' && place.side !== 'middle') || place.side === 'middle');
}

function RegionShape({ shape, side, value, onPick }: { shape: Shape; side: Place['side'] } & Omit<FigureProps, 'view'>) {
  const place: Place = { region: shape.region, side, ...(shape.aspect && { aspect: shape.aspect }) };
  const press = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    onPick(place);
  };
  return (
    <g class="region" role="button" tabindex={0} aria-pressed={isOn(value, place)} aria-label={placeWords(place)} onClick={() => onPick(place)} onKeyDown={press}>
      <path class="reach" d={shape.d} />
      <path class="shape" d={shape.d} />
    </g>
  );
}

/** One outline with its regions as buttons. Seen from the front the person's right is at the picture's left. */
export function Figure({ view, value, onPick }: FigureProps) {
  const shared = { value, onPick };
  const sides = view === 'front' ? (['right', 'left'] as const) : (['left', 'right'] as const);
  return (
    <svg viewBox="-104 0 208 500" role="group" aria-label={s(view === 'front' ? 'bodyFront' : 'bodyBack')}>
      <pattern id="body-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect width="6" height="6" fill="var(--clay-wash)" />
        <path d="M0 0V6" stroke="var(--clay)" stroke-width="2.5" />
      </pattern>
      {MIDDLE[view].map((shape) => <RegionShape key={shape.region} shape={shape} side="middle" {...shared} />)}
      {sides.map((side, i) => (
        <g key={side} transform={i === 0 ? 'scale(-1 1)' : ''}>
          {HALF[view].map((shape) => <RegionShape key={shape.region} shape={shape} side={side} {...shared} />)}
        </g>
      ))}
      {sides.map((side, i) => (
        <text key={side} x={i === 0 ? -40 : 40} y={492} aria-hidden="true">{s(side === 'right' ? 'bodyRight' : 'bodyLeft')}</text>
      ))}
    </svg>
  );
}
