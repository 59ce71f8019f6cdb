import { isProblem } from '../../core/answer/problem.ts';
import { type Lap, learnPace, type Pace, usualPace } from '../../core/gluing/pace.ts';
import type { Shop } from '../../store/records/shop.ts';
import { type Laps, lapOrder } from './dry-run-laps.ts';

type Learnt = NonNullable<Shop['pace']>;

/** Under which name the shop keeps a lap: all seconds so far, and all cm2, seams or clamps done in them. */
const nameOf = (lap: Lap) => `glue-${lap}`;

const cm2PerM2 = 1e4;

/** A lap longer than this is a stopwatch that was forgotten. */
const longestSeconds = 86_400;

/** The maker's own pace where dry runs have shown it, the usual one elsewhere. */
export function paceOf({ pace = {} }: Pick<Shop, 'pace'>): Pace {
  const timed = lapOrder.flatMap((lap) => {
    const kept = pace[nameOf(lap)];
    return kept ? [[lap, lap === 'spread' ? { ...kept, count: kept.count / cm2PerM2 } : kept]] : [];
  });
  const learnt = learnPace(Object.fromEntries(timed));
  return isProblem(learnt) ? usualPace : learnt;
}

/** Whether any dry run has been timed. */
export const hasLearnt = ({ pace = {} }: Pick<Shop, 'pace'>): boolean =>
  lapOrder.some((lap) => pace[nameOf(lap)] !== undefined);

/**
 * What the shop keeps once one more dry run is timed: m2, seams and clamps done by so many hands; what is kept is the time
 * of one. A lap of no time or without end, or in which nothing was done, tells nothing and is left out.
 */
export function withDryRun(
  pace: Learnt | undefined,
  laps: Laps,
  done: Readonly<Record<Lap, number>>,
  hands = 1,
): Learnt {
  const added = lapOrder.flatMap((lap, at) => {
    const seconds = ((laps[at + 1] ?? 0) - (laps[at] ?? 0)) / 1000;
    const count = lap === 'spread' ? Math.round(done.spread * cm2PerM2) : done[lap];
    if (seconds <= 0 || seconds > longestSeconds || count === 0) return [];
    const before = pace?.[nameOf(lap)] ?? { seconds: 0, count: 0 };
    return [[nameOf(lap), { seconds: before.seconds + seconds * hands, count: before.count + count }]];
  });
  return { ...pace, ...Object.fromEntries(added) };
}
