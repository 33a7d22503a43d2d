import type { ReadinessItem } from '../api/types';
import { t } from '../words';
import { amount, partAmount } from './sentences';

interface PairProps {
  name?: string;
  asked: { value: number; words: string };
  shown: { value: number; words: string } | null;
  range: readonly [number, number] | null;
  atMost: boolean;
}
const WIDE = 100;
const HIGH = 10;

/** Asked is outlined as a plan is, shown is solid; the thin line over its end is what it may truly be; unknown is dotted ground. */
function Bar({ kind, part, range }: { kind: 'asked' | 'shown' | 'unknown'; part: number; range?: readonly [number, number] | null }) {
  return (
    <svg class={`rdy-bar rdy-${kind}`} viewBox={`0 0 ${WIDE} ${HIGH}`} preserveAspectRatio="none" aria-hidden="true">
      <rect x={0.5} y={1} width={Math.max(part * WIDE - 1, 0.5)} height={HIGH - 2} />
      {range && <path d={`M${range[0] * WIDE} ${HIGH / 2}H${range[1] * WIDE}`} />}
    </svg>
  );
}

function Pair({ name, asked, shown, range, atMost }: PairProps) {
  const most = Math.max(asked.value, shown?.value ?? 0, range?.[1] ?? 0, Number.MIN_VALUE);
  return (
    <div class="rdy-pair">
      {name && <b>{name}</b>}
      <span>{atMost ? `${t('rdyAsked')}, ${t('rdyAtMost')}` : t('rdyAsked')}</span><Bar kind="asked" part={asked.value / most} /><span class="tnum">{asked.words}</span>
      <span>{t('rdyShown')}</span>
      {shown ? <Bar kind="shown" part={shown.value / most} range={range && [range[0] / most, range[1] / most]} /> : <Bar kind="unknown" part={1} />}
      <span class="tnum">{shown ? shown.words : t('rdyNotKnown')}</span>
    </div>
  );
}

/** Asked and shown as bars, each with its word and its number. Each pair has a scale of its own: bars of two pairs are not compared. */
export function Bars({ item }: { item: ReadinessItem }) {
  const { parts, asked, shown, low, high, unit, at_most } = item;
  if (parts.length > 0) {
    return (
      <div class="rdy-parts">
        {parts.map((part) => (
          <Pair key={part.subject} name={part.subject === 'longest_day' ? t('seaKm') : t(`rdy_${part.subject}`)} atMost={false} range={null}
            asked={{ value: part.asked, words: partAmount(part.asked, part) }} shown={{ value: part.shown, words: partAmount(part.shown, part) }} />
        ))}
      </div>
    );
  }
  if (asked === null) return null;
  const known = shown === null ? null : { value: shown, words: amount(shown, unit) };
  return <Pair atMost={at_most} asked={{ value: asked, words: amount(asked, unit) }} shown={known} range={low === null || high === null ? null : [low, high]} />;
}
