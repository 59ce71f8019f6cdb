import { type Phrase, phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import { clearOf } from './clear-stretches.ts';
import type { Blank, BreakdownPlan, BreakdownProblem, CutBlank, CutStrip, RoughBoard, Strip } from './problem-types.ts';
import { rippedWidth } from './ripped-width.ts';

/** A crosscut that is still to be made, mm. */
export interface Crosscut {
  /** Where it lies on the board as it came. */
  readonly place: number;
  /** Where it is measured, from the nearest end that is still there towards the start. */
  readonly at: number;
  readonly say: Phrase;
}

/** One blank of a board, and the rips that are still to be made. */
export interface CutOfBlank {
  /** Its place in the plan. */
  readonly at: number;
  readonly blank: CutBlank;
  /** What it goes by at the bench. */
  readonly letter: string;
  /** In the order in which they are ripped, with their places in the blank. */
  readonly strips: readonly { readonly at: number; readonly strip: CutStrip }[];
  readonly rips: readonly Phrase[];
}

export interface BoardCuts {
  readonly crosscuts: readonly Crosscut[];
  readonly blanks: readonly CutOfBlank[];
  /** What is free after the last blank, mm. */
  readonly leftover: number;
}

/** A blank as it was cut before the plan was made, if it was. */
export const cutBefore = ({ cut = [] }: BreakdownProblem, { board, start }: Blank): CutBlank | undefined =>
  cut.find((blank) => blank.board === board && blank.start === start);

/**
 * The letter that a blank goes by at the bench: A, B, C along its board.
 *
 * @param plan blanks, mm
 * @param at the blank's place in the plan
 * @returns a letter; from the 27th blank of a board on with a number after it
 * @valid a place that the plan has
 * @example letterOf(planOf(blank('B1', 1033, 500), blank('B1', 0, 1030)), 0) // => 'B'
 * @source common practice
 */
export const letterOf = ({ blanks }: Pick<BreakdownPlan, 'blanks'>, at: number): string => {
  const { board, start } = blanks[at] as Blank;
  const place = blanks.filter((other) => other.board === board && other.start < start).length;
  return String.fromCharCode(65 + (place % 26)) + (place < 26 ? '' : Math.floor(place / 26) + 1);
};

/**
 * The cuts of one board that are still to be made, in the order in which they are made.
 *
 * Every crosscut is measured from the same end, so that errors don't add up: first where a blank begins, unless it
 * begins where the last cut's kerf ended, then where it ends. Once blanks are off, what is left is measured from the end
 * that the last of them left. Then each blank is ripped, wide strips first.
 *
 * The board is marked out whole before it is cut: once the first blank is off, its end is no longer there to measure
 * from.
 *
 * @param asked boards, shop and what is cut already, mm
 * @param plan blanks, mm
 * @param board one of the boards asked
 * @returns crosscuts with their positions, rips with their fence settings, and the length left over, mm
 * @valid plans without breaches
 * @example boardCuts(smallProblem, planOf(blank('B1', 0, 1030), blank('B1', 1033, 500)), smallProblem.boards[0])
 *   // => { crosscuts: [{ at: 1030 }, { at: 1533 }], leftover: 914 }
 * @source common practice
 */
export function boardCuts(asked: BreakdownProblem, plan: BreakdownPlan, board: RoughBoard): BoardCuts {
  const { ripKerf, crosscutKerf } = asked.shop;
  const { length } = board;
  const placed = plan.blanks
    .map((blank, at) => ({ blank, at, before: cutBefore(asked, blank)?.strips.length ?? 0 }))
    .filter(({ blank }) => blank.board === board.id)
    .sort((a, b) => a.blank.start - b.blank.start);
  const crosscuts: Crosscut[] = [];
  let [fresh, free] = [0, 0];
  const crosscut = (place: number, why: string) => {
    const at = place - fresh;
    const say =
      fresh === 0
        ? phrase`Crosscut at ${mm(at)} ${why}.`
        : phrase`Crosscut the rest at ${mm(at)} from where blanks came off.`;
    crosscuts.push({ place, at, say });
  };
  for (const { blank, before } of placed) {
    const end = blank.start + blank.length;
    // Half a kerf tells a blank that follows from one that lies further along.
    if (!before && blank.start > free + crosscutKerf / 2) crosscut(blank.start - crosscutKerf, 'to start clear');
    if (!before && end < length) crosscut(end, 'from the end');
    free = Math.min(length, end + crosscutKerf);
    if (before) fresh = free;
  }
  const blanks = placed.map(({ blank, at, before }) => {
    const width = clearOf(board, blank)?.width ?? 0;
    return {
      blank,
      at,
      letter: letterOf(plan, at),
      strips: blank.strips.map((strip, place) => ({ at: place, strip })).sort((a, b) => b.strip.width - a.strip.width),
      rips: rips(blank.strips.slice(before), width - rippedWidth(blank.strips, ripKerf), ripKerf),
    };
  });
  return { crosscuts, blanks, leftover: length - free };
}

/** Rips, equal ones together; the last strip needs none when nothing worth a rip is left beside it. */
function rips(strips: readonly Strip[], beside: number, kerf: number): Phrase[] {
  const times = new Map<number, number>();
  for (const { width } of strips.toSorted((a, b) => b.width - a.width)) times.set(width, (times.get(width) ?? 0) + 1);
  const [narrowest, alike = 0] = [...times].at(-1) ?? [];
  // A sliver thinner than half the kerf can't be ripped off: the blade would wander out of the wood.
  const lastIsLeft = narrowest !== undefined && beside < Math.max(kerf / 2, 1e-3);
  if (lastIsLeft) times.set(narrowest, alike - 1);
  return [...times]
    .filter(([, count]) => count > 0)
    .map(([fence, count], place, all) => {
      const rest = lastIsLeft && place === all.length - 1 ? '; what is left is the last strip' : '';
      return phrase`Rip ${count === 1 ? 'one strip' : `${count} strips`} with the fence at ${mm(fence)}${rest}.`;
    });
}
