import { rackOf } from '../../../src/core/breakdown/rack.ts';
import { jobsOf, laidOut, type Pattern, type Rival, roomOf, wholeBlankFor, woodOf, yieldOf } from './rival.ts';

/** Longest first, each time the blank that gives most of what is still needed for its wood; nothing is ever taken back. */
export const greedy: Rival = {
  name: 'plain greedy',
  plan(asked) {
    const rack = rackOf(asked);
    const room = roomOf(rack);
    const patterns: Pattern[] = [];
    for (const job of jobsOf(rack)) {
      const length = job.unit.blankLength;
      const piece = length + rack.shop.crosscutKerf;
      const own: Pattern[] = [];
      for (let made = 0; made < job.need; ) {
        let best = -1;
        let price = Number.POSITIVE_INFINITY;
        for (let runAt = 0; runAt < rack.runs.length; runAt++) {
          const gives = Math.min(yieldOf(rack, job.unit, runAt), job.need - made);
          if (gives <= 0 || (room[runAt] ?? 0) < piece) continue;
          const wood = woodOf(rack, runAt, length) / gives;
          if (wood < price) [best, price] = [runAt, wood];
        }
        if (best < 0) break;
        own.push(wholeBlankFor(rack, job, best, made));
        room[best] = (room[best] ?? 0) - piece;
        made += yieldOf(rack, job.unit, best);
      }
      patterns.push(...own);
    }
    return laidOut(asked, patterns);
  },
};
