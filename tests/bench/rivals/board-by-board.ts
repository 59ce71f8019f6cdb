import { type Rack, rackOf } from '../../../src/core/breakdown/rack.ts';
import {
  type Job,
  jobsOf,
  laidOut,
  type Pattern,
  type Rival,
  roomOf,
  wholeBlankFor,
  woodOf,
  yieldOf,
} from './rival.ts';

/** Steps into which a run's length is divided; blanks are rounded up to them. */
const step = 5;

/**
 * Dynamic programming over a board's length, board after board: that set of blanks of one board is cut next which makes
 * most finished face beyond what its wood should; that yield is asked for less and less.
 */
export const boardByBoard: Rival = {
  name: "dynamic programming over a board's length",
  plan(asked) {
    const rack = rackOf(asked);
    const jobs = jobsOf(rack);
    const made = jobs.map(() => 0);
    const room = roomOf(rack);
    const patterns: Pattern[] = [];
    for (let share = 0.9; share >= 0; ) {
      let best: Fill = { gain: 0, chosen: [] };
      let from = -1;
      for (let runAt = 0; runAt < room.length; runAt++) {
        const fill = bestFill(rack, jobs, made, runAt, room[runAt] ?? 0, share);
        if (fill.gain > best.gain) [best, from] = [fill, runAt];
      }
      if (from < 0) share -= 0.05;
      for (const jobAt of best.chosen) {
        const job = jobs[jobAt] as Job;
        patterns.push(wholeBlankFor(rack, job, from, made[jobAt] ?? 0));
        made[jobAt] = (made[jobAt] ?? 0) + yieldOf(rack, job.unit, from);
        room[from] = (room[from] ?? 0) - job.unit.blankLength - rack.shop.crosscutKerf;
      }
    }
    return laidOut(asked, patterns);
  },
};

/** Blanks of one run, by their jobs, and the finished face that they make beyond a share of their wood, mm2. */
interface Fill {
  readonly gain: number;
  readonly chosen: readonly number[];
}

function bestFill(
  rack: Rack,
  jobs: readonly Job[],
  made: readonly number[],
  runAt: number,
  room: number,
  share: number,
): Fill {
  const steps = Math.floor(room / step);
  const fills: Fill[] = Array.from({ length: steps + 1 }, () => ({ gain: 0, chosen: [] }));
  for (const [jobAt, { unit, need }] of jobs.entries()) {
    const gives = yieldOf(rack, unit, runAt);
    const lacks = need - (made[jobAt] ?? 0);
    if (gives <= 0 || lacks <= 0) continue;
    const size = Math.ceil((unit.blankLength + rack.shop.crosscutKerf) / step);
    const face = unit.part.length * (unit.part.panel ? 1 : unit.part.width);
    const wood = woodOf(rack, runAt, unit.blankLength);
    for (let copy = 0; copy * gives < lacks; copy++) {
      const more = Math.min(gives, lacks - copy * gives) * face - share * wood;
      for (let at = steps; at >= size; at--) {
        const { gain, chosen } = fills[at - size] as Fill;
        if (gain + more > (fills[at] as Fill).gain) fills[at] = { gain: gain + more, chosen: [...chosen, jobAt] };
      }
    }
  }
  return fills[steps] as Fill;
}
