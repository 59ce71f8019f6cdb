import { boardCuts, type Cut } from '../../core/breakdown/board-cuts.ts';
import type { BreakdownProblem, RoughBoard } from '../../core/breakdown/problem-types.ts';
import type { Plan, PlanBlank, PlanStrip } from '../../store/records/plan.ts';

/** One blank of a board, with the letter it goes by at the bench and its place in the plan. */
export interface SheetBlank {
  readonly at: number;
  readonly letter: string;
  readonly blank: PlanBlank;
  /** In the order in which they are ripped, with their places in the blank. */
  readonly strips: readonly { readonly at: number; readonly strip: PlanStrip }[];
  readonly rips: readonly Cut[];
}

/** What is done to one board. */
export interface BoardSheet {
  readonly board: RoughBoard;
  readonly crosscuts: readonly Cut[];
  readonly blanks: readonly SheetBlank[];
  readonly leftover: number;
}

/** A, B, C along the board. */
export const letterOf = (plan: Pick<Plan, 'blanks'>, blankAt: number): string => {
  const { board, start } = plan.blanks[blankAt] as PlanBlank;
  const place = plan.blanks.filter((other) => other.board === board && other.start < start).length;
  return String.fromCharCode(65 + (place % 26)) + (place < 26 ? '' : Math.floor(place / 26) + 1);
};

/** The boards that a plan cuts, in the order of the rack, with their cuts in order. */
export function boardSheets(asked: BreakdownProblem, plan: Pick<Plan, 'blanks' | 'short'>): BoardSheet[] {
  return asked.boards.flatMap((board) => {
    const own = plan.blanks
      .map((blank, at) => ({ blank, at }))
      .filter(({ blank }) => blank.board === board.id)
      .sort((a, b) => a.blank.start - b.blank.start);
    if (own.length === 0) return [];
    const { cuts, leftover } = boardCuts(asked, plan, board.id);
    const blanks = own.map(({ blank, at }) => ({
      at,
      letter: letterOf(plan, at),
      blank,
      strips: blank.strips.map((strip, n) => ({ at: n, strip })).sort((a, b) => b.strip.width - a.strip.width),
      rips: cuts.filter((cut) => cut.kind === 'rip' && cut.blank === at),
    }));
    return [{ board, crosscuts: cuts.filter(({ kind }) => kind === 'crosscut'), blanks, leftover }];
  });
}

/** Strips of a blank that are alike, counted: of one width and for one piece of a part. */
export function stripGroups({ strips }: SheetBlank): (PlanStrip & { readonly count: number })[] {
  const groups = new Map<string, PlanStrip & { readonly count: number }>();
  for (const { strip } of strips) {
    const key = `${strip.width} ${strip.part} ${strip.unit}`;
    groups.set(key, { ...strip, count: (groups.get(key)?.count ?? 0) + 1 });
  }
  return [...groups.values()];
}
