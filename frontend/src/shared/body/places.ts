/** Places on the body, as pain reports name them (decision 0001). */
import { s } from '../words/shared';

export const REGIONS = [
  'head', 'neck', 'shoulder', 'upper_arm', 'elbow', 'forearm', 'hand', 'chest', 'abdomen', 'upper_back', 'lower_back',
  'hip', 'groin', 'buttock', 'thigh', 'knee', 'shin', 'calf', 'achilles', 'ankle', 'foot',
] as const;
export type Region = (typeof REGIONS)[number];
export type Aspect = 'front' | 'back' | 'inner' | 'outer';
export type Side = 'left' | 'right' | 'both' | 'middle';

export interface Place {
  region: Region;
  aspect?: Aspect;
  side: Side;
}
/** A place before its side is known: one line of the list. */
export type Spot = Omit<Place, 'side'>;

const MIDDLE: readonly Region[] = ['head', 'neck', 'chest', 'abdomen', 'upper_back', 'lower_back'];
/** Regions on the body's middle line also have a middle. */
export const hasMiddle = (region: Region): boolean => MIDDLE.includes(region);

/** What walkers and their therapists name most, first; then the rest from the hip down and from the head down. */
export const FIRST_SPOTS: readonly Spot[] = [
  { region: 'knee', aspect: 'front' }, { region: 'knee', aspect: 'inner' }, { region: 'knee', aspect: 'outer' }, { region: 'hip' },
  { region: 'lower_back' }, { region: 'shin' }, { region: 'calf' }, { region: 'achilles' }, { region: 'ankle' }, { region: 'foot' },
];
export const OTHER_SPOTS: readonly Spot[] = [
  { region: 'knee', aspect: 'back' }, { region: 'groin' }, { region: 'buttock' }, { region: 'thigh', aspect: 'front' },
  { region: 'thigh', aspect: 'back' }, { region: 'thigh', aspect: 'inner' }, { region: 'thigh', aspect: 'outer' },
  { region: 'head' }, { region: 'neck' }, { region: 'shoulder' }, { region: 'upper_arm' }, { region: 'elbow' }, { region: 'forearm' },
  { region: 'hand' }, { region: 'chest' }, { region: 'abdomen' }, { region: 'upper_back' },
];

export const samePlace = (a: Spot | null, b: Spot): boolean => a?.region === b.region && a.aspect === b.aspect;

const ASPECT = { front: 'aspectFront', back: 'aspectBack', inner: 'aspectInner', outer: 'aspectOuter' } as const;
const SIDE = { right: 'sideRight', left: 'sideLeft', both: 'sideBoth', middle: 'sideMiddle' } as const;

/** "knee, front" */
export function spotWords({ region, aspect }: Spot): string {
  return aspect ? s(ASPECT[aspect], { place: s(region) }) : s(region);
}

/** "right knee, front"; written for the middle of a sentence. */
export function placeWords({ region, aspect, side }: Place): string {
  const sided = s(SIDE[side], { place: s(region) });
  return aspect ? s(ASPECT[aspect], { place: sided }) : sided;
}

/** The same at the beginning of a sentence or on a button. */
export function placeTitle(place: Place): string {
  const words = placeWords(place);
  return words.charAt(0).toUpperCase() + words.slice(1);
}
