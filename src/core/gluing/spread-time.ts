import { firstBad } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { count, m2, seconds } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
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
   * Indices of the seams of each stage, in their order: the fewest stages of neighbours that each fit. Undefined when
   * one seam alone takes too long, or setting the clamps, which lie across the whole panel at every stage.
   */
  readonly split: readonly (readonly number[])[] | undefined;
}

export interface SpreadWork {
  readonly seams: readonly Seam[];
  readonly clamps: number;
  readonly pace: Pace;
  /** 1 alone, 2 with a helper who works as fast. */
  readonly hands?: number;
}

type WorkingTimes = Pick<AdhesiveTimes, 'open' | 'closed'>;

const needs = ({ seams, clamps, pace, hands = 1 }: SpreadWork) => ({
  openSeconds: (seamsArea(seams) * pace.secondsPerM2 + seams.length * pace.secondsPerSeam) / hands,
  closedSeconds: (clamps * pace.secondsPerClamp) / hands,
});

function fitOf(work: SpreadWork, { open, closed }: WorkingTimes): Fit {
  const { openSeconds, closedSeconds } = needs(work);
  if (openSeconds <= open.least && closedSeconds <= closed.least) return 'fits';
  return openSeconds <= open.most && closedSeconds <= closed.most ? 'tight' : 'late';
}

function badWork({ seams, clamps, pace, hands = 1 }: SpreadWork) {
  const limits = { above: 0, most: 86400 };
  return (
    badSeams(seams) ??
    firstBad([
      ['clamps', 'The number of clamps', clamps, 'count', { least: 0, most: 500, whole: true }],
      ['hands', 'The number of people', hands, 'count', { least: 1, most: 4, whole: true }],
      ['pace.secondsPerM2', 'The time to spread', pace.secondsPerM2, 'seconds', limits],
      ['pace.secondsPerSeam', 'The time to close a seam', pace.secondsPerSeam, 'seconds', limits],
      ['pace.secondsPerClamp', 'The time to set a clamp', pace.secondsPerClamp, 'seconds', limits],
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
 * ).value // => { openSeconds: 260, closedSeconds: 120, fit: 'late', split: [[0, 1], [2, 3]] }
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
        {
          finds: 'time to spread and close',
          by: phrase('{area} at {spread} each, {seams} seams at {close}, {hands} at work; open time {open}.', {
            area: m2(seamsArea(seams)),
            spread: seconds(pace.secondsPerM2),
            seams: count(seams.length),
            close: seconds(pace.secondsPerSeam),
            hands: count(hands),
            open: seconds(times.open.least),
          }),
          gives: seconds(needed.openSeconds),
        },
        {
          finds: 'time to clamp',
          by: phrase('{clamps} clamps at {each}; closed time {closed}.', {
            clamps: count(clamps),
            each: seconds(pace.secondsPerClamp),
            closed: seconds(times.closed.least),
          }),
          gives: seconds(needed.closedSeconds),
        },
      ],
      holds: phrase('The first seam spread waits for the last. A dry run shows your pace.'),
      sources: ['assumption'],
    },
  };
}

/** The fewest stages, each filled before the next begins, that fit the glue's shortest times. */
function splitOf({ seams, pace, hands = 1 }: SpreadWork, closedSeconds: number, { open, closed }: WorkingTimes) {
  const stages: number[][] = [];
  let left = 0;
  for (const [index, seam] of seams.entries()) {
    const takes = (seamArea(seam) * pace.secondsPerM2 + pace.secondsPerSeam) / hands;
    if (takes > open.least || closedSeconds > closed.least) return undefined;
    const stage = stages.at(-1);
    if (stage && takes <= left) stage.push(index);
    else {
      stages.push([index]);
      left = open.least;
    }
    left -= takes;
  }
  return stages;
}

/**
 * The kinds of adhesive whose shortest times are long enough for the whole stage, quickest first.
 *
 * Takes work as `spreadTime` does and kinds with their times at today's temperature, seconds; a kind that can't be
 * used today is left out by the caller. Returns those that fit, in order of open time.
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
