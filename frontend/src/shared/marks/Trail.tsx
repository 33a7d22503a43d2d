import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { s } from '../words/shared';
import { columnsFor, layTrail, type Leg } from './layTrail';
import { Cairn } from './marks';
import { Stone, type StoneState } from './Stone';

export interface TrailSet {
  key: string;
  state: StoneState;
  /** Under the stone: the exercise, or "set 2". */
  caption: string;
  top: string;
  under: string;
  spoken: string;
}
/** A round of a circuit, or one exercise whose sets follow each other. */
export interface TrailGroup {
  key: string;
  title: string;
  note: string;
  sets: readonly TrailSet[];
  /** A finished group may be shown as one line; `onOpen` unfolds it. */
  folded?: boolean;
  onOpen?: () => void;
}
interface TrailProps {
  groups: readonly TrailGroup[];
  onPress: (set: TrailSet, group: TrailGroup) => void;
  /** Words under the cairn at the end. */
  end: ComponentChildren;
  /** One set a line, for those who do not like the turns. */
  straight?: boolean;
}

const walked = (set: TrailSet | undefined) => set?.state === 'laid' || set?.state === 'left-out';

/** A session as a path of stones. */
export function Trail({ groups, onPress, end, straight = false }: TrailProps) {
  const [place, columns] = useColumns(straight);
  const open = groups.filter((group) => !group.folded);
  const sets = open.flatMap((group) => group.sets);
  const legs = layTrail(open.map((group) => group.sets.length), columns);
  return (
    <div class={`trail ${straight ? 'straight' : ''}`} ref={place}>
      {groups.map((group) =>
        group.folded ? (
          <Folded key={group.key} group={group} />
        ) : (
          legs.filter((leg) => open[leg.group] === group)
            .map((leg) => <Row key={`${group.key}.${leg.from}`} leg={leg} group={group} columns={columns} sets={sets} onPress={onPress} />)
        ),
      )}
      <div class="trail-end">
        <Cairn filled={sets.every(walked)} />
        <span>{end}</span>
      </div>
    </div>
  );
}

function Folded({ group }: { group: TrailGroup }) {
  return (
    <button type="button" class="folded" onClick={group.onOpen}>
      <Cairn />
      <b>{group.title}</b> <span class="soft">{group.note}</span> <u>{s('open')}</u>
    </button>
  );
}

interface RowProps extends Pick<TrailProps, 'onPress'> {
  leg: Leg;
  group: TrailGroup;
  columns: number;
  sets: readonly TrailSet[];
}

function Row({ leg, group, columns, sets, onPress }: RowProps) {
  return (
    <section class="leg" style={{ '--row': `${leg.height}px`, '--above': `${leg.above}px`, '--columns': columns }}>
      <svg class="ground" viewBox={`0 0 100 ${leg.height}`} preserveAspectRatio="none" aria-hidden="true">
        {leg.pieces.map((piece) => (
          <path key={piece.d} class={walked(sets[piece.after]) ? 'walked' : 'ahead'} d={piece.d} />
        ))}
      </svg>
      {leg.heading && (
        <h2 class={leg.heading}>
          {group.title} <span>{group.note}</span>
        </h2>
      )}
      <ol class="stones">
        {leg.stones.map((spot, i) => {
          const set = group.sets[leg.from + i] as TrailSet;
          return (
            <li key={set.key} style={{ '--column': spot.column, '--lower': `${spot.lower}px` }}>
              <Stone index={leg.index + i} state={set.state} top={set.top} under={set.under} spoken={set.spoken} onPress={() => onPress(set, group)} />
              {set.state === 'next' && <span class={`word-next ${spot.column === columns ? 'before' : ''}`} aria-hidden="true">{s('nextWord')}</span>}
              <span class="caption" aria-hidden="true">{set.caption}</span>
            </li>
          );
        })}
      </ol>
    </section>
  );
}

/** Measures itself, so that larger text or a wider phone gives more or fewer columns instead of clipping. */
function useColumns(straight: boolean) {
  const place = useRef<HTMLDivElement>(null);
  const [columns, setColumns] = useState(4);
  useLayoutEffect(() => {
    const element = place.current;
    if (!element || straight) return setColumns(straight ? 1 : 4);
    const measure = () => {
      const stone = element.querySelector<HTMLElement>('.stone:not(.next)');
      setColumns(columnsFor(element.clientWidth, stone?.offsetWidth ?? 72));
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [straight]);
  return [place, columns] as const;
}
