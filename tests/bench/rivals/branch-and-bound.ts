import { rackOf } from '../../../src/core/breakdown/rack.ts';
import { greedy } from './greedy.ts';
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

/** Nodes after which it answers with the best found so far. */
const mostNodes = 3_000_000;

/**
 * Branch and bound over whole blanks for one job each: job after job, longest first, each blank from this run or a
 * later one. The bound is the wood that the rest costs at the least wood per width or piece of any run.
 */
export const branchAndBound: Rival = {
  name: 'branch and bound',
  plan(asked) {
    const rack = rackOf(asked);
    const jobs = jobsOf(rack);
    const room = roomOf(rack);
    const offers = jobs.map(({ unit }) =>
      rack.runs
        .map((_, runAt) => ({ runAt, gives: yieldOf(rack, unit, runAt), wood: woodOf(rack, runAt, unit.blankLength) }))
        .filter(({ gives }) => gives > 0)
        .sort((a, b) => a.wood / a.gives - b.wood / b.gives),
    );
    const cheapest = offers.map(([first]) => (first ? first.wood / first.gives : Number.POSITIVE_INFINITY));
    const after = jobs.map((_, at) =>
      jobs.slice(at + 1).reduce((sum, job, n) => sum + job.need * (cheapest[at + 1 + n] ?? 0), 0),
    );
    const path: { jobAt: number; runAt: number; made: number }[] = [];
    let best: typeof path | undefined;
    let least = Number.POSITIVE_INFINITY;
    let nodes = 0;
    const go = (jobAt: number, made: number, from: number, wood: number): void => {
      const job = jobs[jobAt];
      if (!job) {
        if (wood < least) [least, best] = [wood, [...path]];
        return;
      }
      if (made >= job.need) {
        go(jobAt + 1, 0, 0, wood);
        return;
      }
      const piece = job.unit.blankLength + rack.shop.crosscutKerf;
      const rest = after[jobAt] ?? 0;
      const own = offers[jobAt] ?? [];
      for (let at = from; at < own.length; at++) {
        if (nodes++ > mostNodes) return;
        const offer = own[at];
        if (!offer || (room[offer.runAt] ?? 0) < piece) continue;
        // What is still needed can't be had cheaper than from this run on.
        if (wood + ((job.need - made) * offer.wood) / offer.gives + rest >= least) return;
        room[offer.runAt] = (room[offer.runAt] ?? 0) - piece;
        path.push({ jobAt, runAt: offer.runAt, made });
        go(jobAt, made + offer.gives, at, wood + offer.wood);
        path.pop();
        room[offer.runAt] = (room[offer.runAt] ?? 0) + piece;
      }
    };
    go(0, 0, 0, 0);
    if (!best) return greedy.plan(asked);
    const patterns = best.map(
      ({ jobAt, runAt, made }): Pattern => wholeBlankFor(rack, jobs[jobAt] as Job, runAt, made),
    );
    return laidOut(asked, patterns);
  },
};
