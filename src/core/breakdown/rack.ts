import { clearOf, clearStretches } from './clear-stretches.ts';
import { fewestRips, type Rips } from './fewest-rips.ts';
import type { BreakdownProblem, CutBlank, Part, RoughBoard, Shop } from './problem-types.ts';
import { widestStrip } from './strip-limits.ts';
import { plainRule, supplyRule } from './supply-rule.ts';

/** A length of one board, free from end to end, from which blanks are crosscut. */
export interface Run {
  readonly board: RoughBoard;
  /** Place of the board in the problem's list. */
  readonly boardAt: number;
  readonly start: number;
  readonly length: number;
  readonly width: number;
  /** What a mm of its length costs, mm: the board's width, as often as it is as thick as the thinnest one. */
  readonly wood: number;
}

/** One piece of a part. */
export interface Unit {
  readonly part: Part;
  readonly partAt: number;
  /** Counts the part's pieces from 1. */
  readonly unit: number;
  /** The shortest blank that can give it. */
  readonly blankLength: number;
  /** Panel: the width it still lacks. Solid: the width of its one strip. */
  readonly need: number;
}

/** The problem as the search sees it: free runs, units still to be made, blanks that are cut already. */
export interface Rack {
  readonly shop: Shop;
  readonly runs: readonly Run[];
  readonly units: readonly Unit[];
  readonly cut: readonly { readonly blank: CutBlank; readonly run: Run }[];
  /** Whether the maker lets this board serve this part, and the species agree. */
  readonly maySupply: (partAt: number, boardAt: number) => boolean;
  /** Whether the part is to show, and the board has no good face. */
  readonly tooPlain: (partAt: number, boardAt: number) => boolean;
  /** How many boards next to each other may make one panel of this part; Infinity when any may. */
  readonly together: readonly number[];
  /** What a whole blank of a run gives for a unit's part, at the part's own blank length. */
  readonly wholeBlank: (unit: Unit, runAt: number) => Rips;
}

/** The rack as a problem that `checkProblem` let pass leaves it, with what is cut already taken out. */
export function rackOf(asked: BreakdownProblem): Rack {
  const { shop, boards, parts, cut = [] } = asked;
  const runs = freeRuns(asked);
  const rips = new Map<number, Rips>();
  const wholeBlank = (unit: Unit, runAt: number): Rips => {
    const key = unit.partAt * runs.length + runAt;
    const known = rips.get(key);
    if (known) return known;
    const run = runs[runAt] as Run;
    const found = fewestRips(shop, run.width, widestStrip(shop, run.board, unit.part, unit.blankLength));
    rips.set(key, found);
    return found;
  };
  const limits = new Map(asked.wishes?.together?.map((wish) => [wish.part, wish.boards]));
  return {
    shop,
    runs,
    units: unitsToMake(asked),
    cut: cut.flatMap((blank) => {
      const boardAt = boards.findIndex((board) => board.id === blank.board);
      const board = boards[boardAt];
      if (!board) return [];
      const width = clearOf(board, blank)?.width ?? board.width;
      return [{ blank, run: { board, boardAt, start: blank.start, length: blank.length, width, wood: 0 } }];
    }),
    maySupply: supplyRule(asked),
    tooPlain: plainRule(asked),
    together: parts.map((part) => limits.get(part.id) ?? Number.POSITIVE_INFINITY),
    wholeBlank,
  };
}

/** The boards that may serve a part, in order: next to each other here is next to each other in the rack. */
export const servingBoards = ({ runs, maySupply }: Rack, partAt: number): number[] =>
  [...new Set(runs.map(({ boardAt }) => boardAt))].filter((boardAt) => maySupply(partAt, boardAt));

/** The clear stretches of the boards without the blanks that are cut already and the kerfs beside them. */
export function freeRuns({ shop, boards, cut = [] }: BreakdownProblem): Run[] {
  const thinnest = Math.min(...boards.map(({ thickness }) => thickness));
  // In quarters, as wood is sold: a board that is a hair thicker than its neighbour is no dearer.
  const wood = ({ width, thickness }: RoughBoard) => (width * Math.round((4 * thickness) / thinnest)) / 4;
  return boards.flatMap((board, boardAt) => runsOf(shop, board, boardAt, wood(board), cut));
}

function runsOf(shop: Shop, board: RoughBoard, boardAt: number, wood: number, cut: readonly CutBlank[]): Run[] {
  const taken = cut.filter((blank) => blank.board === board.id).sort((a, b) => a.start - b.start);
  const runs: Run[] = [];
  let reached = Number.NEGATIVE_INFINITY;
  for (const { start, length, width } of clearStretches(board)) {
    const end = start + length;
    let from = Math.max(start, reached);
    for (const blank of taken) {
      const blankEnd = blank.start + blank.length + shop.crosscutKerf;
      if (blankEnd <= from || blank.start - shop.crosscutKerf >= end) continue;
      const until = blank.start - shop.crosscutKerf;
      if (until > from) runs.push({ board, boardAt, start: from, length: until - from, width, wood });
      from = Math.max(from, blankEnd);
    }
    if (end > from) runs.push({ board, boardAt, start: from, length: end - from, width, wood });
    // Blanks of stretches that touch still need a kerf between them.
    reached = end + shop.crosscutKerf;
  }
  return runs;
}

function unitsToMake(asked: BreakdownProblem): Unit[] {
  const { shop, parts, cut = [] } = asked;
  const made = new Map<string, number>();
  for (const strip of cut.flatMap((blank) => blank.strips)) {
    if (strip.spoilt) continue;
    const key = `${strip.part}#${strip.unit}`;
    made.set(key, (made.get(key) ?? 0) + strip.width - shop.edgeAllowance);
  }
  return parts.flatMap((part, partAt) =>
    Array.from({ length: part.quantity }, (_, index) => {
      const done = made.get(`${part.id}#${index + 1}`);
      const open = part.panel ? part.width - (done ?? 0) : part.width + shop.edgeAllowance;
      const need = !part.panel && done !== undefined ? 0 : Math.max(0, open);
      return { part, partAt, unit: index + 1, blankLength: part.length + shop.lengthAllowance, need };
    }).filter((unit) => unit.need > 0),
  );
}
