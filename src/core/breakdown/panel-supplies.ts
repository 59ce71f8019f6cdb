import type { Draft, Place } from './draft.ts';
import { newBlankCost, plainCost } from './draft-cost.ts';
import { fewestRips, type Rips } from './fewest-rips.ts';
import { blurred, type Mood } from './mood.ts';
import type { Run, Unit } from './rack.ts';
import { pick } from './random.ts';
import { widestStrip } from './strip-limits.ts';

/** One thing that could give width to a panel: a new blank, or what is free beside the strips of an open one. */
export interface Supply extends Place {
  readonly rips: Rips;
}

/** Runs looked at for one panel; of a larger rack every so manieth, others each time. */
const enoughRuns = 200;

/** What could give width to a panel now, and what wood each costs in mm2; `all` looks at every run of however large a rack. */
export function panelSupplies(draft: Draft, unit: Unit, mood: Mood, all = false): Supply[] {
  // Length that lengthening would take from each run, so that all supplies can be chosen together.
  const promised = new Float64Array(draft.room.length);
  return [...openBlanks(draft, unit, mood, promised), ...newBlanks(draft, unit, mood, promised, all)];
}

function openBlanks(draft: Draft, unit: Unit, mood: Mood, promised: Float64Array): Supply[] {
  const { shop, maySupply } = draft.rack;
  const supplies: Supply[] = [];
  for (const [blankAt, blank] of draft.blanks.entries()) {
    const { run, free, length, runAt } = blank;
    if (free < shop.minStrip || !maySupply(unit.partAt, run.boardAt)) continue;
    const longer = unit.blankLength > length;
    const more = unit.blankLength - length + (promised[runAt] ?? 0);
    if (longer && !(mood.lengthen && draft.canLengthen(blank, length + more))) continue;
    const needed = longer ? unit.blankLength : length;
    const rips = fewestRips(shop, free, widestStrip(shop, run.board, unit.part, needed));
    if (rips.strips === 0) continue;
    if (longer) promised[runAt] = more;
    const wood = longer ? run.wood * (needed - length) : 0;
    supplies.push({
      rips,
      cost: blurred(mood, wood) + ripsCost(draft, unit, run, rips, mood),
      boardAt: run.boardAt,
      blankAt,
      runAt,
    });
  }
  return supplies;
}

function newBlanks(draft: Draft, unit: Unit, mood: Mood, promised: Float64Array, all: boolean): Supply[] {
  const { shop, runs, maySupply, wholeBlank } = draft.rack;
  const stride = all ? 1 : Math.ceil(runs.length / enoughRuns);
  const first = stride === 1 ? 0 : pick(mood.random, stride);
  const piece = unit.blankLength + shop.crosscutKerf;
  const supplies: Supply[] = [];
  for (let runAt = first; runAt < runs.length; runAt += stride) {
    const run = runs[runAt] as Run;
    const copies = Math.floor(((draft.room[runAt] as number) - (promised[runAt] as number)) / piece);
    if (copies < 1 || !maySupply(unit.partAt, run.boardAt)) continue;
    const rips = wholeBlank(unit, runAt);
    if (rips.strips === 0) continue;
    const wood = newBlankCost(draft, runAt, unit.blankLength, mood.weights);
    const reserved = mood.credit > 0 ? roomForSolid(draft, unit, runAt, mood) : undefined;
    if (reserved) supplies.push(reserved);
    const most = Math.min(copies - (reserved ? 1 : 0), Math.ceil(unit.need / rips.gives));
    for (let copy = 0; copy < most; copy++)
      supplies.push({
        rips,
        cost: blurred(mood, wood) + ripsCost(draft, unit, run, rips, mood),
        boardAt: run.boardAt,
        blankAt: -1,
        runAt,
      });
  }
  return supplies;
}

/** What strips cost beside their wood: each makes a seam, and may be too plain for the part. */
const ripsCost = ({ rack }: Draft, unit: Unit, { boardAt }: Run, { strips, width }: Rips, { weights }: Mood): number =>
  strips * weights.strip + plainCost(rack, unit, boardAt, strips * width, weights);

/** A new blank of which one strip's width is left for a solid part that waits, and paid for by it. */
function roomForSolid(draft: Draft, unit: Unit, runAt: number, mood: Mood): Supply | undefined {
  const { shop, runs, maySupply } = draft.rack;
  const run = runs[runAt] as Run;
  const solids = mood.waiting.solids(unit.blankLength);
  const solid = solids[pick(mood.random, 2 * solids.length)];
  if (!solid || !maySupply(solid.partAt, run.boardAt)) return undefined;
  if (widestStrip(shop, run.board, solid.part, unit.blankLength) < solid.need) return undefined;
  // A hair more than the strip, so that it fits in spite of rounding.
  const left = run.width - solid.need * (1 + 1e-9) - shop.ripKerf;
  const rips = fewestRips(shop, left, widestStrip(shop, run.board, unit.part, unit.blankLength));
  if (rips.strips === 0) return undefined;
  const wood = newBlankCost(draft, runAt, unit.blankLength, mood.weights);
  const paid = mood.credit * solid.need * (solid.blankLength + shop.crosscutKerf);
  const cost = blurred(mood, wood) - paid + ripsCost(draft, unit, run, rips, mood);
  return { rips, cost, boardAt: run.boardAt, blankAt: -1, runAt };
}
