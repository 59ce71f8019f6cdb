import type { Draft } from './draft.ts';
import type { Rack, Run, Unit } from './rack.ts';
import type { Weights } from './weights.ts';

/** What a unit that is short costs, in mm2: more than any wood that could be saved by leaving it out. */
export function shortageCost(rack: Rack): number {
  let wood = 0;
  for (const run of rack.runs) wood += run.wood * (run.length + rack.shop.crosscutKerf);
  return 2 * wood;
}

/** What a draft costs in mm2 of the thinnest board, by wood consumed and what else is weighed. */
export function draftCost(draft: Draft, weights: Weights, shortage: number): number {
  const { rack, blanks, missing, distance, room } = draft;
  const { crosscutKerf } = rack.shop;
  let cost = 0;
  const started = new Uint8Array(rack.runs.length);
  for (const { runAt, run, length, strips } of blanks) {
    cost += strips.length * weights.strip;
    if (weights.plain > 0)
      for (const { unit, width } of strips)
        cost += plainCost(rack, rack.units[unit] as Unit, run.boardAt, width, weights);
    if (runAt < 0) continue;
    cost += run.wood * (length + crosscutKerf);
    if (!started[runAt]) cost += weights.board;
    started[runAt] = 1;
  }
  if (weights.longLeftovers > 0)
    for (const [runAt, run] of rack.runs.entries())
      cost -= leftoverWorth(run, (room[runAt] as number) - crosscutKerf, weights);
  for (const [at, lacks] of missing.entries()) if (lacks > 0) cost += shortage * (1 + (distance[at] as number));
  return cost;
}

/** What it costs in mm2 that so much width for a unit comes from a board too plain for it. */
export function plainCost(rack: Rack, unit: Unit, boardAt: number, width: number, weights: Weights): number {
  return weights.plain > 0 && rack.tooPlain(unit.partAt, boardAt) ? weights.plain * width * unit.blankLength : 0;
}

/** What a new blank costs in mm2: its wood, and what the run's leftover is worth less for being shorter. */
export function newBlankCost(draft: Draft, runAt: number, blankLength: number, weights: Weights): number {
  const run = draft.rack.runs[runAt] as Run;
  const { crosscutKerf } = draft.rack.shop;
  const piece = blankLength + crosscutKerf;
  const wood = run.wood * piece;
  if (weights.longLeftovers === 0) return wood;
  const left = (draft.room[runAt] as number) - crosscutKerf;
  return wood + leftoverWorth(run, left, weights) - leftoverWorth(run, left - piece, weights);
}

/** Beyond the wood that it is, a leftover is worth more the longer it is: by the square of its length. */
function leftoverWorth(run: Run, left: number, weights: Weights): number {
  return left > 0 ? (weights.longLeftovers * run.wood * left * left) / run.board.length : 0;
}
