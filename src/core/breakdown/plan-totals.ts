import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import { m2, percent } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { clearOf, clearStretches } from './clear-stretches.ts';
import { consumed, consumedWood } from './consumed.ts';
import { unitCover } from './plan-validity.ts';
import type { Blank, BreakdownPlan, BreakdownProblem, RoughBoard } from './problem-types.ts';

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
  const cover = unitCover(asked, plan);
  const finished = sum(cover, ({ part, missingWidth }) => part.length * (part.width - missingWidth)) / perSquareMetre;
  const used = consumed(asked, plan);
  const wood = {
    parts: finished,
    kerf: sum(losses, (loss) => loss.kerf),
    edges: sum(losses, (loss) => loss.edges),
    ends: sum(losses, (loss) => loss.ends),
    defects: sum(started, unclearArea),
    // Panels are glued up a little wider than they must be.
    offcuts: sum(losses, (loss) => loss.offcut + loss.jointed) - finished,
  };
  const gone = sum(Object.values(wood), (area) => area);
  const leftovers = sum(started, (board) => board.width * board.length) / perSquareMetre - gone;
  return {
    consumed: used,
    volume: consumedWood(asked, plan),
    yield: yieldOf(finished, used),
    wood: { ...wood, leftovers },
    strips: plan.blanks.reduce((total, blank) => total + blank.strips.length, 0),
    boards: started.length,
    short: plan.short.length,
  };
}

const sum = <T>(items: readonly T[], value: (item: T) => number): number =>
  items.reduce((total, item) => total + value(item), 0);

const perSquareMetre = 1e6;

/** What becomes of one blank, m2; `jointed` is the area of its strips once they are jointed and cut to length. */
function blankLosses({ shop, boards, parts }: BreakdownProblem, blank: Blank) {
  const board = boards.find(({ id }) => id === blank.board);
  const clear = board && clearOf(board, blank);
  const width = board?.width ?? 0;
  const clearWidth = clear?.width ?? width;
  const crosscut = Math.min(shop.crosscutKerf, (board?.length ?? 0) - blank.start - blank.length);
  const ripped = sum(blank.strips, (strip) => strip.width);
  const between = shop.ripKerf * Math.max(0, blank.strips.length - 1);
  const beside = Math.max(0, clearWidth - ripped - between);
  const lastRip = Math.min(shop.ripKerf, beside);
  const finished = blank.strips.map((strip) => {
    const length = parts.find(({ id }) => id === strip.part)?.length ?? blank.length;
    return { length, width: strip.width };
  });
  return {
    kerf: (width * crosscut + (between + lastRip) * blank.length) / perSquareMetre,
    edges: sum(finished, ({ length }) => shop.edgeAllowance * length) / perSquareMetre,
    ends: sum(finished, (strip) => strip.width * (blank.length - strip.length)) / perSquareMetre,
    jointed: sum(finished, (strip) => (strip.width - shop.edgeAllowance) * strip.length) / perSquareMetre,
    offcut: ((beside - lastRip) * blank.length) / perSquareMetre,
  };
}

function unclearArea(board: RoughBoard): number {
  return (
    (board.width * board.length - sum(clearStretches(board), ({ length, width }) => length * width)) / perSquareMetre
  );
}

/** How the wood of a plan is counted. */
export const byFace = phrase`By area of the face, without what goes back to the rack.`;

const yieldOf = (finished: number, used: number): Worked =>
  oneStep(
    'yield',
    phrase`finished ${m2(finished)} ÷ consumed ${m2(used)}`,
    percent(used > 0 ? (100 * finished) / used : 0),
    ['geometry'],
    byFace,
  );
