import { useId } from 'preact/hooks';
import { placeTitle } from '../../shared/body/places';
import { addDays, dayAndMonth, dayShort, mondayOf, today as dayOf, type LocalDate } from '../../shared/dates';
import { PlannedDay } from '../../shared/marks/PlannedDay';
import { Key } from '../caseload/Key';
import type { Overview } from '../api/types';
import { dayAndTime } from '../../shared/dates';
import { markOf } from '../parts/planned';
import { shareOfDay } from '../parts/Season';
import { useWidth } from '../parts/useWidth';
import { t } from '../words';
import { layStrip, type Bar, type PainRow, type Strip as Laid } from './layStrip';
import { StripTable } from './StripTable';

/** Narrower than this, px, two weeks are shown instead of six. */
const NARROW_PX = 620;
const LEFT_PX = { wide: 132, narrow: 108 } as const;
const FIRST_WIDTH_PX = 900;
/** From this many days on it is worth saying that a place is quiet. House value, days. */
const QUIET_DAYS = 7;

const Bars = ({ bars, name }: { bars: readonly Bar[]; name: string }) => (
  <>{bars.map(({ key, ...box }) => <rect key={key} class={name} {...box} />)}</>
);

function Words({ y, label, under }: { y: number; label: string; under?: string | undefined }) {
  return (
    <>
      <text class="label" x="0" y={y}>{label}</text>
      {under && <text class="soft" x="0" y={y + 17}>{under}</text>}
    </>
  );
}

function Pain({ row, overview, left, right }: { row: PainRow; overview: Overview; left: number; right: number }) {
  const known = overview.pain_regions.find(({ region, side }) => region === row.region && side === row.side);
  const quiet = known?.quiet_days && known.quiet_days >= QUIET_DAYS ? t('stripQuiet', { n: known.quiet_days }) : t('stripUsual', { rating: overview.client.usual_pain });
  return (
    <g>
      <Words y={row.ground - 14} label={placeTitle({ region: row.region, side: row.side })} under={quiet} />
      <path class="base" d={`M${left} ${row.ground}H${right}`} />
      {row.stems.map(({ event_id, x, y, rating, hollow, flagged }) => (
        <g key={event_id} class={`stem ${hollow ? 'hollow' : ''} ${flagged ? 'flagged' : ''}`}>
          <path d={`M${x} ${row.ground}V${y}`} />
          <rect x={x - 4} y={y - 4} width="8" height="8" />
          <text x={x} y={y - 9}>{rating}</text>
        </g>
      ))}
    </g>
  );
}

function Grid({ laid, dots }: { laid: Laid; dots: string }) {
  const { mondays, top, ground, unheard, dayWidth } = laid;
  return (
    <>
      <pattern id={dots} class="dots" width="8" height="8" patternUnits="userSpaceOnUse"><circle cx="2" cy="2" r="1" /><circle cx="6" cy="6" r="1" /></pattern>
      {mondays.map(({ date, x }) => (
        <g key={date}>
          <path class="week" d={`M${x} ${top}V${ground}`} />
          <text class="soft" x={x + 4} y="13">{dayWidth > 13 ? dayShort(date) : dayAndMonth(date)}</text>
        </g>
      ))}
      {unheard && <rect fill={`url(#${dots})`} x={unheard.x} y={top} width={unheard.width} height={ground - top} />}
      {unheard && <path class="silence" d={`M${unheard.x} ${top}V${ground}`} />}
    </>
  );
}

function Foot({ laid, heard, left, width }: { laid: Laid; heard: string | null; left: number; width: number }) {
  const y = laid.ground + 17;
  const room = width - laid.todayX > 60;
  return (
    <>
      <path class="now" d={`M${laid.todayX} ${laid.top}V${laid.ground + 6}`} />
      <text class="soft" x={room ? laid.todayX + 4 : laid.todayX - 4} text-anchor={room ? 'start' : 'end'} y={y}>{t('stripToday')}</text>
      {heard && <text class="soft" text-anchor={laid.todayX - left > 150 ? 'end' : 'start'} x={laid.todayX - left > 150 ? laid.todayX - 6 : left} y={y}>{t('stripHeard', { time: heard })}</text>}
    </>
  );
}

function Picture({ laid, overview, left, width, heard, text }: { laid: Laid; overview: Overview; left: number; width: number; heard: string | null; text: string }) {
  const dots = useId();
  const stone = Math.min(22, Math.max(13, laid.dayWidth * 1.2));
  return (
    <svg class="strip" viewBox={`0 0 ${width} ${laid.height}`} role="img" aria-label={text}>
      <Grid laid={laid} dots={dots} />
      <Words y={laid.top + 21} label={t('stripPlanned')} />
      {laid.stones.map(({ item, x, y }, i) => (
        <svg key={item.planned_id} x={x - stone / 2} y={y - stone * 0.41} width={stone} height={stone * 0.82} viewBox="0 0 76 62">
          <PlannedDay state={markOf(item)} index={i} />
        </svg>
      ))}
      {laid.painRows.map((row) => <Pain key={`${row.region}.${row.side}`} row={row} overview={overview} left={left} right={laid.todayX} />)}
      <Words y={laid.effortY} label={t('stripEffort')} under={t('stripEffortUnit')} />
      {laid.effort.map(({ key, x, value }) => <text key={key} class="number" x={x} y={laid.effortY}>{value}</text>)}
      <Words y={laid.ground - 34} label={t('stripLoad')} under={t('stripLoadUnit')} />
      <Bars bars={laid.done} name="load-done" />
      <Bars bars={laid.planned} name="load-planned" />
      <path class="base" d={`M${left} ${laid.ground}H${width}`} />
      <Foot laid={laid} heard={heard} left={left} width={width} />
    </svg>
  );
}

interface Span { from: LocalDate; to: LocalDate }

/** Five weeks and the next one; where it is narrow, last week and this one. */
export function spanOf(today: LocalDate, narrow: boolean): Span {
  const monday = mondayOf(today);
  return narrow ? { from: addDays(monday, -7), to: addDays(monday, 6) } : { from: addDays(monday, -28), to: addDays(monday, 13) };
}

function stripText({ from, to }: Span, overview: Overview): string {
  const n = overview.pain.filter(({ day }) => day >= from && day <= to).length;
  return t('stripText', { from: dayShort(from), to: dayShort(to), pain: n ? t('stripTextPain', { n }) : t('stripTextNoPain') });
}

/** Planned days, pain, effort and load, day by day. */
export function Strip({ overview, now }: { overview: Overview; now: Date }) {
  const { box, width: px } = useWidth();
  const zone = overview.client.time_zone;
  const narrow = (px ?? FIRST_WIDTH_PX) < NARROW_PX;
  // Drawn at the width it has, so that words keep their size; larger where the person has enlarged all text.
  const enlarged = parseFloat(getComputedStyle(document.documentElement).fontSize) / 16;
  const width = Math.max(280, (px ?? FIRST_WIDTH_PX) / enlarged);
  const left = LEFT_PX[narrow ? 'narrow' : 'wide'];
  const span = spanOf(overview.ridge.today, narrow);
  const heardAt = overview.heard_until ? new Date(overview.heard_until) : null;
  const laid = layStrip({
    ...span, days: overview.days, pain: overview.pain, width, left, today: overview.ridge.today, dayShare: shareOfDay(now, zone),
    heard: heardAt && { day: dayOf(heardAt, zone), share: shareOfDay(heardAt, zone) },
    flagged: new Set(overview.flags.filter(({ status }) => status === 'open').flatMap(({ evidence }) => evidence.map(({ event_id }) => event_id))),
  });
  return (
    <div ref={box} class="strip-box">
      <Picture laid={laid} overview={overview} left={left} width={width} heard={heardAt && dayAndTime(heardAt, zone)} text={stripText(span, overview)} />
      <Key>
        <li><StemMark />{t('keyMoving')}</li>
        <li><StemMark hollow />{t('keyMorning')}</li>
        <li><StemMark flagged />{t('keyFlagged')}</li>
      </Key>
      <StripTable overview={overview} />
    </div>
  );
}

function StemMark({ hollow, flagged }: { hollow?: boolean; flagged?: boolean }) {
  return (
    <svg class="strip-mark" viewBox="0 0 12 18" aria-hidden="true">
      <g class={`stem ${hollow ? 'hollow' : ''} ${flagged ? 'flagged' : ''}`}><path d="M6 18V6" /><rect x="2" y="2" width="8" height="8" /></g>
    </svg>
  );
}
