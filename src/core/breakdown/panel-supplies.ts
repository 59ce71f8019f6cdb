import type { Draft } from './draft.ts';
import { fewestRips, type Rips } from './fewest-rips.ts';
import { blurred, type Mood } from './mood.ts';
import type { Unit } from './rack.ts';
import { widestStrip } from './strip-limits.ts';

/** One thing that could give width to a panel: a new blank, or what is free beside the strips of an open one. */
export interface Supply {
  readonly rips: Rips;
  readonly cost: number;
  readonly boardAt: number;
  /** An open blank, or -1 for a new one on the run. */
  readonly blankAt: number;
  readonly runAt: number;
}

/** Everything that could give width to a panel now, and what wood each costs in mm2. */
export function panelSupplies(draft: Draft, unit: Unit, mood: Mood): Supply[] {
  // Length that lengthening would take from each run, so that all supplies can be chosen together.
  const promised = new Float64Array(draft.room.length);
  return [...openBlanks(draft, unit, mood, promised), ...newBlanks(draft, unit, mood, promised)];
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
    const wood = longer ? run.board.width * (needed - length) : 0;
    supplies.push({
      rips,
      cost: blurred(mood, wood) + rips.strips * mood.stripCost,
      boardAt: run.boardAt,
      blankAt,
      runAt,
    });
  }
  return supplies;
}

function newBlanks(draft: Draft, unit: Unit, mood: Mood, promised: Float64Array): Supply[] {
  const { shop, runs, maySupply, wholeBlank } = draft.rack;
  const piece = unit.blankLength + shop.crosscutKerf;
  const supplies: Supply[] = [];
  for (const [runAt, run] of runs.entries()) {
    const copies = Math.floor(((draft.room[runAt] as number) - (promised[runAt] as number)) / piece);
    if (copies < 1 || !maySupply(unit.partAt, run.boardAt)) continue;
    const rips = wholeBlank(unit, runAt);
    if (rips.strips === 0) continue;
    const most = Math.min(copies, Math.ceil(unit.need / rips.gives));
    for (let copy = 0; copy < most; copy++)
      supplies.push({
        rips,
        cost: blurred(mood, run.board.width * piece) + rips.strips * mood.stripCost,
        boardAt: run.boardAt,
        blankAt: -1,
        runAt,
      });
  }
  return supplies;
}
