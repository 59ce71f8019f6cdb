import { type Phrase, phrase } from '../../core/answer/phrase.ts';
import { mm } from '../../core/answer/quantity.ts';
import { boardCuts } from '../../core/breakdown/board-cuts.ts';
import type { BreakdownProblem, RoughBoard } from '../../core/breakdown/problem-types.ts';
import type { Plan, PlanBlank, PlanStrip } from '../../store/records/plan.ts';
import { cutBefore } from './cut-state.ts';

/** One blank of a board, with the letter it goes by at the bench and its place in the plan. */
export interface SheetBlank {
  readonly at: number;
  readonly letter: string;
  readonly blank: PlanBlank;
  /** In the order in which they are ripped, with their places in the blank. */
  readonly strips: readonly { readonly at: number; readonly strip: PlanStrip }[];
  readonly rips: readonly Phrase[];
}

/** A crosscut that is still to be made. */
export interface Crosscut {
  /** Where it lies on the board as it came, mm. */
  readonly place: number;
  /** Where it is measured, from the nearest end that is still there towards the chalked one, mm. */
  readonly at: number;
  readonly say: Phrase;
}

/** What is done to one board. */
export interface BoardSheet {
  readonly board: RoughBoard;
  readonly crosscuts: readonly Crosscut[];
  readonly blanks: readonly SheetBlank[];
  readonly leftover: number;
}

/** A, B, C along the board. */
export const letterOf = (plan: Pick<Plan, 'blanks'>, blankAt: number): string => {
  const { board, start } = plan.blanks[blankAt] as PlanBlank;
  const place = plan.blanks.filter((other) => other.board === board && other.start < start).length;
  return String.fromCharCode(65 + (place % 26)) + (place < 26 ? '' : Math.floor(place / 26) + 1);
};

type Planned = Pick<Plan, 'blanks' | 'short' | 'problem' | 'cutDone'>;

/** The boards that a plan cuts, in the order of the rack, with the cuts that it asks for in order. */
export function boardSheets(asked: BreakdownProblem, plan: Planned): BoardSheet[] {
  return asked.boards.flatMap((board) => {
    const own = plan.blanks
      .map((blank, at) => ({ blank, at }))
      .filter(({ blank }) => blank.board === board.id)
      .sort((a, b) => a.blank.start - b.blank.start);
    if (own.length === 0) return [];
    const { cuts, leftover } = boardCuts(asked, plan, board.id);
    const isOff = (at: number) => cutBefore(plan, plan.blanks[at] as PlanBlank) > 0;
    const off = own
      .filter(({ at }) => isOff(at))
      .map(({ blank }) => blank.start + blank.length + asked.shop.crosscutKerf);
    const crosscuts = cuts.filter(({ kind, blank }) => kind === 'crosscut' && !isOff(blank));
    const blanks = own.map(({ blank, at }) => ({
      at,
      letter: letterOf(plan, at),
      blank,
      strips: blank.strips.map((strip, n) => ({ at: n, strip })).sort((a, b) => b.strip.width - a.strip.width),
      rips: isOff(at)
        ? blank.strips.slice(cutBefore(plan, blank)).map(({ width }) => ripped(width))
        : cuts.filter((cut) => cut.kind === 'rip' && cut.blank === at).map(({ say }) => say),
    }));
    return [{ board, crosscuts: crosscuts.map(({ at, say }) => measured(at, say, off)), blanks, leftover }];
  });
}

const ripped = (width: number): Phrase => phrase('Rip one strip with the fence at {fence}.', { fence: mm(width) });

/** Once blanks are off, what is left is measured from the end that the last of them left. */
function measured(place: number, say: Phrase, off: readonly number[]): Crosscut {
  const end = Math.max(0, ...off.filter((at) => at <= place));
  if (end === 0) return { place, at: place, say };
  const at = place - end;
  return { place, at, say: phrase('Crosscut the rest at {at} from where blanks came off.', { at: mm(at) }) };
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
