import { firstBad, type NumberCheck } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { count, m2, seconds } from '../answer/quantity.ts';
import type { Range } from '../answer/range.ts';
import { sumOf } from '../answer/sum-of.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import type { AdhesiveTimes } from './adhesive.ts';
import type { Pace } from './pace.ts';
import { badSeams, type Seam, seamArea, seamsArea } from './seam.ts';

/** `fits`: within the shortest time the glue may have; `tight`: only if it lasts longer; `late`: not even then. */
export type Fit = 'fits' | 'tight' | 'late';

export interface SpreadTime {
  /** To spread all glue and bring all seams together. */
  readonly openSeconds: number;
  /** To set all clamps after that. */
  readonly closedSeconds: number;
  readonly fit: Fit;
  /**
   * How many seams each stage has, in their order: the fewest stages of neighbours that each fit. Undefined when one
   * seam alone takes too long, or setting the clamps, which lie across the whole panel at every stage.
   */
  readonly split: readonly number[] | undefined;
}

export interface SpreadWork {
  readonly seams: readonly Seam[];
  readonly clamps: number;
  readonly pace: Pace;
  /** 1 alone, 2 with a helper who works as fast. */
  readonly hands?: number;
}

type WorkingTimes = Pick<AdhesiveTimes, 'open' | 'closed'>;

const seamTakes = (seam: Seam, { pace, hands = 1 }: SpreadWork) => (seamArea(seam) * pace.spread + pace.close) / hands;

const needs = (work: SpreadWork) => ({
  openSeconds: sumOf(work.seams, (seam) => seamTakes(seam, work)),
  closedSeconds: (work.clamps * work.pace.clamp) / (work.hands ?? 1),
});

function fitOf(work: SpreadWork, { open, closed }: WorkingTimes): Fit {
  const { openSeconds, closedSeconds } = needs(work);
  const within = (end: keyof Range) => openSeconds <= open[end] && closedSeconds <= closed[end];
  return within('least') ? 'fits' : within('most') ? 'tight' : 'late';
}

function badWork({ seams, clamps, pace, hands = 1 }: SpreadWork) {
  const limits = { above: 0, most: 86400 };
  return (
    badSeams(seams) ??
    firstBad([
      ['clamps', 'The number of clamps', clamps, 'count', { least: 0, most: 500, whole: true }],
      ['hands', 'The number of people', hands, 'count', { least: 1, most: 4, whole: true }],
      ...Object.entries(pace).map(
        ([lap, each]): NumberCheck => [`pace.${lap}`, `The time to ${lap}`, each, 'seconds', limits],
      ),
    ])
  );
}

/**
 * Whether the glue stays open long enough for one stage at the maker's own pace.
 *
 * @param work seams in mm, clamps to set, pace in seconds, hands at work
 * @param times open and closed time of the adhesive at today's temperature, seconds
 * @returns seconds needed in each, whether they fit, and how to split the seams into stages that do
 * @valid the first seam spread waits until the last is closed, and all clamps are set after that; seams in the order in
 *   which they lie
 * @errors no seams, a count or a pace that makes no sense
 * @example spreadTime(
 *   { seams: Array(4).fill({ length: 1000, width: 25 }), clamps: 8, pace: usualPace },
 *   { open: range(130), closed: range(300) },
 * ).value // => { openSeconds: 260, closedSeconds: 120, fit: 'late', split: [2, 2] }
 * @source arithmetic on the maker's pace; times from the table or the label
 */
export function spreadTime(work: SpreadWork, times: WorkingTimes): Outcome<Worked<SpreadTime>> {
  const bad = badWork(work);
  if (bad) return bad;
  const needed = needs(work);
  const { seams, clamps, pace, hands = 1 } = work;
  return {
    value: { ...needed, fit: fitOf(work, times), split: splitOf(work, needed.closedSeconds, times) },
    working: {
      steps: [
        workingStep(
          'time to spread and close',
          phrase`${m2(seamsArea(seams))} at ${seconds(pace.spread)} for ${m2(1)}, ${count(seams.length)} seams at ${seconds(pace.close)}, ${count(hands)} at work.`,
          seconds(needed.openSeconds),
        ),
        workingStep(
          'time to clamp',
          phrase`${count(clamps)} clamps at ${seconds(pace.clamp)}, ${count(hands)} at work.`,
          seconds(needed.closedSeconds),
        ),
      ],
      holds: phrase`The first seam spread waits for the last.`,
      sources: ['assumption'],
    },
  };
}

/** The fewest stages, each filled before the next begins, that fit the glue's shortest times. */
function splitOf(work: SpreadWork, closedSeconds: number, { open, closed }: WorkingTimes): number[] | undefined {
  if (closedSeconds > closed.least) return undefined;
  const stages: number[] = [];
  let left = 0;
  for (const seam of work.seams) {
    const takes = seamTakes(seam, work);
    if (takes > open.least) return undefined;
    if (takes > left) {
      stages.push(0);
      left = open.least;
    }
    stages[stages.length - 1] = (stages.at(-1) ?? 0) + 1;
    left -= takes;
  }
  return stages;
}

/**
 * The kinds of adhesive whose shortest times are long enough for the whole stage, quickest first.
 *
 * @param work as for `spreadTime`
 * @param kinds with their times at today's temperature, seconds
 * @returns those that fit, in order of open time
 * @valid as `spreadTime`; a kind that can't be used today is left out by the caller
 * @example slowerKinds(
 *   { seams: Array(4).fill({ length: 1000, width: 25 }), clamps: 8, pace: usualPace },
 *   [200, 900].map((open) => ({ times: { open: range(open), closed: range(300) } })),
 * ).length // => 1
 * @source arithmetic
 */
export function slowerKinds<T extends { readonly times: WorkingTimes }>(work: SpreadWork, kinds: readonly T[]): T[] {
  return kinds
    .filter(({ times }) => fitOf(work, times) === 'fits')
    .sort((a, b) => a.times.open.least - b.times.open.least);
}
