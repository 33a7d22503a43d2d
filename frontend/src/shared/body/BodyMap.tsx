import { useEffect, useState } from 'preact/hooks';
import { s } from '../words/shared';
import { Figure } from './Figure';
import { FIRST_SPOTS, hasMiddle, OTHER_SPOTS, placeTitle, samePlace, spotWords, type Place, type Side, type Spot } from './places';

interface BodyMapProps {
  value: Place | null;
  onChange: (place: Place) => void;
}

/** Where does it hurt: the outline, and the same places as a list for those who cannot or would not tap a drawing. */
export function BodyMap({ value, onChange }: BodyMapProps) {
  // One outline at a time, twice as large: two beside each other leave regions of 30 px, narrower than a finger.
  const [view, setView] = useState<'front' | 'back'>(value?.aspect === 'back' ? 'back' : 'front');
  return (
    <div class="body-map">
      <div class="views" role="group" aria-label={s('bodyMap')}>
        {(['front', 'back'] as const).map((name) => (
          <button key={name} type="button" class="pick" aria-pressed={view === name} onClick={() => setView(name)}>
            {s(name === 'front' ? 'bodyFront' : 'bodyBack')}
          </button>
        ))}
      </div>
      <Figure view={view} value={value} onPick={onChange} />
      <p class="chosen" role="status">{value && <b>{placeTitle(value)}</b>}</p>
      {value && value.side !== 'middle' && <OtherSide value={value} onChange={onChange} />}
      <PlaceList value={value} onChange={onChange} />
    </div>
  );
}

function OtherSide({ value, onChange }: { value: Place; onChange: BodyMapProps['onChange'] }) {
  const [first, setFirst] = useState<Side>(value.side);
  useEffect(() => {
    if (value.side !== 'both') setFirst(value.side);
  }, [value.side]);
  const both = value.side === 'both';
  return (
    <button type="button" class="pick" aria-pressed={both} onClick={() => onChange({ ...value, side: both ? (first === 'both' ? 'right' : first) : 'both' })}>
      {s('bodyBothSides')}
    </button>
  );
}

function PlaceList({ value, onChange }: BodyMapProps) {
  const [all, setAll] = useState(false);
  const shown = all ? [...FIRST_SPOTS, ...OTHER_SPOTS] : FIRST_SPOTS;
  return (
    <>
      <h2>{s('bodyList')}</h2>
      <ul class="places">
        {shown.map((spot) => <PlaceLine key={spotWords(spot)} spot={spot} value={value} onChange={onChange} />)}
      </ul>
      <button type="button" class="btn quiet" aria-expanded={all} onClick={() => setAll(!all)}>{s(all ? 'bodyFewer' : 'bodyAll')}</button>
    </>
  );
}

const SIDE_WORDS = { right: 'bodyRight', middle: 'bodyMiddle', left: 'bodyLeft' } as const;

function PlaceLine({ spot, value, onChange }: { spot: Spot } & BodyMapProps) {
  const sides = hasMiddle(spot.region) ? (['right', 'middle', 'left'] as const) : (['right', 'left'] as const);
  const words = spotWords(spot);
  const title = words.charAt(0).toUpperCase() + words.slice(1);
  const on = (side: Side) => samePlace(value, spot) && (value?.side === side || (value?.side === 'both' && side !== 'middle'));
  return (
    <li>
      <span>{title}</span>
      <span class={`sides ${sides.length === 3 ? 'three' : ''}`}>
        {sides.map((side) => (
          <button key={side} type="button" class="pick" aria-pressed={on(side)} aria-label={`${title}, ${s(SIDE_WORDS[side])}`} onClick={() => onChange({ ...spot, side })}>
            {s(SIDE_WORDS[side])}
          </button>
        ))}
      </span>
    </li>
  );
}
