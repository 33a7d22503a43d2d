import { useEffect, useState } from 'preact/hooks';
import { spokenDose, stoneLabel } from '../../../shared/dose';
import { Trail, type TrailGroup, type TrailSet } from '../../../shared/marks/Trail';
import type { Circuit } from '../../../shared/program';
import { exerciseName } from '../../parts/names';
import { largeText } from '../../largeText';
import { progressFor } from '../../phone';
import { straightList } from '../../prefs';
import { press } from '../../session/actions';
import { doneToday, doseFor, findExercise } from '../../session/library';
import type { Planned } from '../../session/plan';
import { nextSet, setsOf, type Progress, type SetPlace } from '../../session/progress';
import { t } from '../../words';

/** From this many sets on, finished rounds fold to one line. House value, sets. */
const FOLD_FROM_SETS = 17;

export function doseInUse(planned: Planned, { prescription }: SetPlace, progress: Progress) {
  const { as, variant } = doneToday(prescription, progress.swaps[prescription.key]);
  const ladder = findExercise(planned.version.exercises, as.exercise)?.ladder ?? [];
  return doseFor(as, ladder.find((rung) => rung.variant === variant) ?? null);
}

function toStone(planned: Planned, set: SetPlace, progress: Progress, next: string | null): TrailSet {
  const dose = doseInUse(planned, set, progress);
  const exercise = exerciseName(planned, dose);
  const state = progress.done.has(set.key) ? 'laid' : progress.left_out.has(set.key) ? 'left-out' : set.key === next ? 'next' : 'todo';
  const rounds = (planned.session as Circuit).rounds;
  return {
    key: set.key, state, caption: exercise, ...stoneLabel(dose),
    spoken: t('stoneName', { exercise, round: set.round, rounds, dose: spokenDose(dose) }),
  };
}

function noteOf(sets: readonly TrailSet[]): string {
  const laid = sets.filter((set) => set.state === 'laid').length;
  if (laid === sets.length) return t('roundLaid');
  return laid > 0 ? t('roundSome', { laid, all: sets.length }) : t('roundSets', { n: sets.length });
}

const isFinished = (sets: readonly TrailSet[]) => sets.every((set) => set.state === 'laid' || set.state === 'left-out');

function groupsOf(planned: Planned, progress: Progress, opened: ReadonlySet<number>, open: (round: number) => void): TrailGroup[] {
  const [sets, next] = [setsOf(planned.session), nextSet(planned.session, progress)?.key ?? null];
  const long = sets.length >= FOLD_FROM_SETS;
  return Array.from({ length: (planned.session as Circuit).rounds }, (_, i) => {
    const own = sets.filter((set) => set.round === i + 1).map((set) => toStone(planned, set, progress, next));
    const folded = long && isFinished(own) && !opened.has(i + 1);
    const laid = own.filter((set) => set.state === 'laid').length;
    return {
      key: String(i + 1), sets: own, folded, onOpen: () => open(i + 1),
      title: folded ? t('roundFolded', { round: i + 1, laid, all: own.length }) : t('roundTitle', { n: i + 1 }),
      note: folded ? '' : noteOf(own),
    };
  });
}

/** A long path opens with the next stone at this part of the height, so that what was laid last is seen too. House value. */
const NEXT_STANDS_AT = 0.5;

function useNextInSight(count: number): void {
  useEffect(() => {
    if (count < FOLD_FROM_SETS) return;
    // After the path has measured itself, and after the browser has put back its own place on the page.
    const timer = setTimeout(() => {
      const at = document.querySelector('.stone.next')?.getBoundingClientRect().top ?? 0;
      const wanted = innerHeight * NEXT_STANDS_AT;
      if (at > wanted) scrollBy(0, at - wanted);
    }, 80);
    return () => clearTimeout(timer);
  }, []);
}

/** A circuit as a path of stones. */
export function Stones({ planned, end }: { planned: Planned; end: string }) {
  const progress = progressFor(planned.planned_id);
  const [opened, setOpened] = useState<ReadonlySet<number>>(new Set());
  const sets = setsOf(planned.session);
  useNextInSight(sets.length);
  const pressed = (stone: TrailSet) => {
    const set = sets.find((one) => one.key === stone.key);
    if (set) void press(planned, set);
  };
  const groups = groupsOf(planned, progress, opened, (round) => setOpened(new Set([...opened, round])));
  return <Trail groups={groups} onPress={pressed} end={end} straight={straightList.value || largeText.value} />;
}
