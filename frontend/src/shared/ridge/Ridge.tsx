import { useId } from 'preact/hooks';
import { dayAndMonth, dayShort, monthName, sundayOf, type LocalDate } from '../dates';
import { CairnStones, WalkerLines } from '../marks/marks';
import { s } from '../words/shared';
import { computeRidge, monthMarks, pathOf, type RidgeInput, type RidgePicture, type RidgeWeek } from './computeRidge';
import { RidgeTable } from './RidgeTable';

export interface RidgeProps {
  weeks: readonly RidgeWeek[];
  today: LocalDate;
  dayShare?: number;
  heardUntil: LocalDate | null;
  heardShare?: number;
  unheard?: readonly { from: LocalDate; to: LocalDate }[];
  /** First day of the trip, or the program's end. */
  trip?: { name: string; date: LocalDate } | null;
  /** A row's picture: no texture, no labels. Its text stands in the row, so it has no table. */
  small?: boolean;
  /** The desk's picture is twice as wide as it is on a phone. */
  wide?: boolean;
}

/** Room for the cairn at the right, px. */
const CAIRN_PX = 26;
/** "hardest week" yields to "today" when nearer than this, px. */
const WORDS_APART_PX = 90;
const SIZES = {
  phone: { width: 358, height: 230, top: 66, base: 204 },
  wide: { width: 900, height: 230, top: 66, base: 204 },
  small: { width: 156, height: 72, top: 24, base: 68 },
} as const;

const inputOf = (props: RidgeProps): { input: RidgeInput; size: (typeof SIZES)[keyof typeof SIZES] } => {
  const size = SIZES[props.small ? 'small' : props.wide ? 'wide' : 'phone'];
  const { weeks, today, dayShare, heardUntil, heardShare, unheard } = props;
  const input = { weeks, today, heardUntil, width: size.width - (props.small ? 14 : CAIRN_PX), base: size.base, top: size.top };
  return { size, input: { ...input, ...(dayShare !== undefined && { dayShare }), ...(heardShare !== undefined && { heardShare }), ...(unheard && { unheard }) } };
};

/** The same in one or two sentences, for those who do not see the picture. */
export function ridgeText({ weeks, today, heardUntil, trip }: RidgeProps, picture: RidgePicture): string {
  const [first, last] = [weeks[0], weeks.at(-1)];
  if (!first || !last) return '';
  const week = weeks.findIndex(({ starts_on }) => today >= starts_on && today <= sundayOf(starts_on)) + 1;
  const hardest = picture.hardest && weeks[picture.hardest.week];
  return [
    s('ridgeText', { weeks: weeks.length, from: dayAndMonth(first.starts_on), to: dayAndMonth(trip?.date ?? sundayOf(last.starts_on)) }),
    week > 0 && s('ridgeWhere', { week }),
    hardest && s('ridgeHardestText', { date: dayAndMonth(hardest.starts_on) }),
    heardUntil && s('ridgeHeard', { date: dayShort(heardUntil) }),
  ].filter(Boolean).join(' ');
}

/** The season as a ridge, with its words and, when large, the same as a table. */
export function Ridge(props: RidgeProps) {
  const dots = useId();
  const { input, size } = inputOf(props);
  if (props.weeks.length === 0) return null;
  const picture = computeRidge(input);
  return (
    <figure>
      <svg class={`ridge ${props.small ? 'small' : ''}`} viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={ridgeText(props, picture)}>
        <pattern id={dots} class="dots" width="8" height="8" patternUnits="userSpaceOnUse">
          <circle cx="2" cy="2" r="1" />
          <circle cx="6" cy="6" r="1" />
        </pattern>
        <Ground picture={picture} dots={dots} plain={Boolean(props.small)} />
        <path class="ground" d={`M0 ${size.base}H${size.width}`} />
        {props.small ? <SmallEnds picture={picture} size={size} /> : <Labels props={props} input={input} picture={picture} size={size} />}
      </svg>
      {!props.small && <RidgeTable weeks={props.weeks} today={props.today} />}
    </figure>
  );
}

function Ground({ picture, dots, plain }: { picture: RidgePicture; dots: string; plain: boolean }) {
  const closed = (points: RidgePicture['outline']) => `${pathOf(points)}Z`;
  return (
    <>
      {!plain && picture.strata.map((line) => <path key={pathOf(line)} class="strata" d={pathOf(line)} />)}
      {picture.fills.map((shape) => <path key={closed(shape)} class="fill" d={closed(shape)} />)}
      {picture.dotted.map((shape) => <path key={closed(shape)} class="unheard" fill={`url(#${dots})`} d={closed(shape)} />)}
      {!plain && <path class="hachure" d={picture.hachures.ahead} />}
      {!plain && <path class="hachure cut" d={picture.hachures.cut} />}
      <path class="outline" d={pathOf(picture.outline)} />
    </>
  );
}

type Size = (typeof SIZES)[keyof typeof SIZES];

function SmallEnds({ picture, size }: { picture: RidgePicture; size: Size }) {
  return (
    <>
      {picture.today && <Walking at={picture.today} scale={0.75} />}
      <svg class="cairn filled" x={size.width - 14} y={size.base - 13} width="14" height="14" viewBox="0 0 30 30"><CairnStones /></svg>
    </>
  );
}

const Walking = ({ at: [x, y], scale }: { at: readonly [number, number]; scale: number }) => (
  <g class="walker" transform={`translate(${x} ${y - 1}) scale(${scale})`}>
    <WalkerLines />
  </g>
);

interface LabelsProps {
  props: RidgeProps;
  input: RidgeInput;
  picture: RidgePicture;
  size: Size;
}

function Labels({ props, input, picture, size }: LabelsProps) {
  const { today, hardest } = picture;
  const clear = hardest && (!today || Math.abs(hardest.at[0] - today[0]) >= WORDS_APART_PX);
  return (
    <>
      {monthMarks(input).map(({ date, x }) => (
        <g key={date}>
          <path class="ground" d={`M${x} ${size.base}v4`} />
          <text class="month" x={x} y={size.base + 18}>{monthName(date)}</text>
        </g>
      ))}
      {clear && <Hardest at={hardest.at} width={size.width} />}
      {today && (
        <>
          <path class="today-line" d={`M${today[0]} ${today[1]}V${size.base}`} />
          <Walking at={today} scale={1.25} />
          <text class="today-word" x={Math.max(24, today[0])} y={today[1] - 42}>{s('ridgeToday')}</text>
        </>
      )}
      <svg class="cairn filled" x={size.width - 28} y={size.base - 26} width="28" height="28" viewBox="0 0 30 30"><CairnStones /></svg>
      {props.trip && <TripName trip={props.trip} size={size} />}
    </>
  );
}

function Hardest({ at: [x, y], width }: { at: readonly [number, number]; width: number }) {
  return (
    <>
      <path class="lead" d={`M${x} ${y - 4}v-9`} />
      <text class="hardest" x={Math.min(Math.max(x, 50), width - 52)} y={Math.max(y - 18, 50)}>{s('ridgeHardest')}</text>
    </>
  );
}

function TripName({ trip, size }: { trip: { name: string; date: LocalDate }; size: Size }) {
  return (
    <>
      <path class="lead" d={`M${size.width - 14} ${size.base - 31}V40`} />
      <text class="trip name" x={size.width} y={15}>{trip.name}</text>
      <text class="trip" x={size.width} y={33}>{dayAndMonth(trip.date)}</text>
    </>
  );
}
