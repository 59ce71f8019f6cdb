import { sumOf } from '../answer/sum-of.ts';
import type { Worked } from '../answer/worked.ts';
import { clearOf, clearStretches } from './clear-stretches.ts';
import { consumed, consumedWood } from './consumed.ts';
import type { Blank, BreakdownPlan, BreakdownProblem, ClearStretch, RoughBoard } from './problem-types.ts';
import { yieldOf } from './yield-of.ts';

/** Where the wood goes, m2. Everything together is the area of the boards that are started. */
export interface WoodUse {
  /** Finished parts, as wide as they must be. */
  readonly parts: number;
  /** Sawdust of crosscuts and rips. */
  readonly kerf: number;
  /** Jointed off the strips' edges. */
  readonly edges: number;
  /** The length allowance: snipe and last trims; also blanks longer than a strip's part. */
  readonly ends: number;
  /** Beside and between the clear stretches that blanks are cut from. */
  readonly defects: number;
  /** Width left over beside the strips, and panel width beyond the need. */
  readonly offcuts: number;
  /** Length that goes back to the rack. */
  readonly leftovers: number;
}

export interface PlanTotals {
  /** Board width by blank length and kerf, summed, m2. */
  readonly consumed: number;
  /** The wood that was bought for it, m3. */
  readonly volume: number;
  /** Finished area over consumed area, percent. */
  readonly yield: Worked;
  readonly wood: WoodUse;
  readonly strips: number;
  readonly boards: number;
  readonly short: number;
}

/**
 * What a plan consumes, and where the wood goes.
 *
 * @param asked boards, parts and shop, mm
 * @param plan blanks, mm
 * @returns areas in m2, the wood consumed in m3 too, the yield in percent with its working, and counts
 * @valid a plan without breaches. The yield counts what is covered of panels that are short too. Area only: what is
 *   planed off the faces is not counted
 * @example planTotals(oneRail, lastPlan(oneRail)) // => { consumed: 0.08, volume: 0.00216, strips: 1 }
 * @source geometry
 */
export function planTotals(asked: BreakdownProblem, plan: BreakdownPlan): PlanTotals {
  const started = asked.boards.filter((board) => plan.blanks.some((blank) => blank.board === board.id));
  const losses = plan.blanks.map((blank) => blankLosses(asked, blank));
  const lost = (to: keyof (typeof losses)[number]) => sumOf(losses, (loss) => loss[to]) / perSquareMetre;
  const wanted = sumOf(asked.parts, ({ quantity, length, width }) => quantity * length * width);
  const lacking = sumOf(plan.short, ({ part, missingWidth }) => lengthOf(asked, part) * missingWidth);
  const parts = (wanted - lacking) / perSquareMetre;
  const used = consumed(asked, plan);
  const wood = {
    parts,
    kerf: lost('kerf'),
    edges: lost('edges'),
    ends: lost('ends'),
    defects: sumOf(started, unclearArea),
    // Panels are glued up a little wider than they must be.
    offcuts: lost('offcut') + lost('jointed') - parts,
  };
  const gone = sumOf(Object.values(wood), (area) => area);
  const leftovers = sumOf(started, ({ width, length }) => width * length) / perSquareMetre - gone;
  return {
    consumed: used,
    volume: consumedWood(asked, plan),
    yield: yieldOf(parts, used),
    wood: { ...wood, leftovers },
    strips: sumOf(plan.blanks, ({ strips }) => strips.length),
    boards: started.length,
    short: plan.short.length,
  };
}

const perSquareMetre = 1e6;

const lengthOf = ({ parts }: BreakdownProblem, part: string, otherwise = 0): number =>
  parts.find(({ id }) => id === part)?.length ?? otherwise;

/** What becomes of one blank, mm2; `jointed` is the area of its strips once they are jointed and cut to length. */
function blankLosses(asked: BreakdownProblem, { board: id, start, length, strips }: Blank) {
  const { ripKerf, crosscutKerf, edgeAllowance } = asked.shop;
  const board = asked.boards.find((one) => one.id === id);
  const clear = board && clearOf(board, { start });
  const between = ripKerf * Math.max(0, strips.length - 1);
  const beside = Math.max(0, (clear?.width ?? 0) - sumOf(strips, (strip) => strip.width) - between);
  const lastRip = Math.min(ripKerf, beside);
  // What of the cut runs through a defect, or past the board's end, is no clear wood lost.
  const end = start + length;
  const crosscut = sumOf(board ? clearStretches(board) : [], (one) => one.width * within(one, end, end + crosscutKerf));
  const finished = strips.map((strip) => ({ length: lengthOf(asked, strip.part, length), width: strip.width }));
  return {
    kerf: crosscut + (between + lastRip) * length,
    edges: sumOf(finished, (strip) => edgeAllowance * strip.length),
    ends: sumOf(finished, (strip) => strip.width * (length - strip.length)),
    jointed: sumOf(finished, (strip) => (strip.width - edgeAllowance) * strip.length),
    offcut: (beside - lastRip) * length,
  };
}

/** How much of a stretch lies between two places along its board, mm. */
const within = ({ start, length }: ClearStretch, from: number, to: number): number =>
  Math.max(0, Math.min(start + length, to) - Math.max(start, from));

const unclearArea = (board: RoughBoard): number =>
  (board.width * board.length - sumOf(clearStretches(board), ({ length, width }) => length * width)) / perSquareMetre;
