import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome, problem } from '../answer/problem.ts';
import { count, mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { type RoughBoard, reachableThickness, warpCost } from './reachable-thickness.ts';

/** A blank crosscut from a board and ripped into equal strips before it is flattened. */
export interface FlatteningPlan {
  readonly blankLength: number;
  /** Into how many equal strips; 1 leaves it whole. */
  readonly rips: number;
  readonly faceAllowance: number;
}

const mostSensible = { thickness: 500, width: 3000, length: 20000 } as const;

/**
 * Why a rough board with such measurements can't be, or `null` when it can: sizes in mm above zero and within what wood
 * grows to, each kind of warp in mm no deeper than a fifth of its span.
 *
 * Example: a cup of 60 across a board 200 wide is a problem at `cup`.
 *
 * Source: common practice.
 */
export function boardProblem(board: RoughBoard & { readonly crook?: number }): Outcome<null> {
  for (const field of ['thickness', 'width', 'length'] as const) {
    if (!(board[field] > 0)) return problem(field, `The ${field} must be above zero: measure the board again.`);
    if (board[field] > mostSensible[field]) {
      return problem(field, `No board has a ${field} over {most}: check the figure and its unit.`, {
        most: mm(mostSensible[field]),
      });
    }
  }
  const spans = { cup: board.width, bow: board.length, twist: board.width, crook: board.length };
  for (const field of ['cup', 'bow', 'twist', 'crook'] as const) {
    const depth = board[field] ?? 0;
    if (!(depth >= 0)) return problem(field, `The ${field} can't be below zero: enter 0 for none.`);
    // Past a fifth of its span a curve is no longer shallow, and nobody would call such wood a board.
    if (depth > spans[field] / 5) {
      return problem(field, `A ${field} of {depth} is more than a board can have: check the figure and its unit.`, {
        depth: mm(depth),
      });
    }
  }
  return null;
}

/**
 * Thickness left in a blank once it is ripped into equal strips and flat on both faces, with its working.
 *
 * - `board`: rough thickness, width, length, cup, bow and twist, mm
 * - `plan`: blank length in mm, number of equal strips (kerf left out), the least taken off each face in mm
 *
 * Result: mm, 0 when nothing is left.
 * Valid for even, shallow curves; a kink or a wind in one end only must be measured on the blank itself.
 * Errors: measurements that no board has, a blank longer than its board, strips that are no whole number.
 *
 * Example: 28 thick, 250 wide, 2400 long, cup 2.5, bow 6, a blank of 1000 ripped in two, 1 off each face: 24.33.
 *
 * Source: plane geometry.
 */
export function flatThickness(board: RoughBoard, plan: FlatteningPlan): Outcome<Worked> {
  const wrong = boardProblem(board);
  if (isProblem(wrong)) return wrong;
  const { blankLength, rips, faceAllowance } = plan;
  if (!(blankLength > 0)) return problem('blankLength', 'The blank length must be above zero.');
  if (blankLength > board.length) {
    return problem('blankLength', 'The blank is longer than its board of {length}.', { length: mm(board.length) });
  }
  if (!Number.isInteger(rips) || rips < 1 || rips > 50) {
    return problem('rips', 'A blank is ripped into 1 strip or more, up to 50, all whole.');
  }
  if (!(faceAllowance >= 0 && faceAllowance * 2 <= board.thickness)) {
    return problem('faceAllowance', 'What comes off each face is zero or more, and less than half the thickness.');
  }
  const width = board.width / rips;
  const { value, working } = thicknessWorking(board, width, blankLength, faceAllowance);
  const ripping = {
    finds: 'strip width',
    by: phrase('board width {board} / {rips} strips', { board: mm(board.width), rips: count(rips) }),
    gives: mm(width),
  };
  return { value, working: { ...working, steps: [ripping, ...working.steps] } };
}

/** `reachableThickness` with its working, for a piece of this width and length; mm. */
export function thicknessWorking(board: RoughBoard, width: number, length: number, faceAllowance: number): Worked {
  const cost = warpCost(board, width, length);
  const value = reachableThickness(board, width, length, faceAllowance);
  const sizes = { board: mm(board.width), boardLength: mm(board.length), length: mm(length), width: mm(width) };
  return {
    value,
    working: {
      steps: [
        {
          finds: 'lost to cup',
          by: phrase('cup {cup} x ({width} / {board}) squared', { ...sizes, cup: mm(board.cup) }),
          gives: mm(cost.cup),
        },
        {
          finds: 'lost to bow',
          by: phrase('bow {bow} x ({length} / {boardLength}) squared', { ...sizes, bow: mm(board.bow) }),
          gives: mm(cost.bow),
        },
        {
          finds: 'lost to twist',
          by: phrase('half the twist {twist} x {width} / {board} x {length} / {boardLength}', {
            ...sizes,
            twist: mm(board.twist ?? 0),
          }),
          gives: mm(cost.twist),
        },
        {
          finds: 'thickness left',
          by: phrase('{thickness} - {cup} - {bow} - {twist} - 2 x {face}', {
            thickness: mm(board.thickness),
            cup: mm(cost.cup),
            bow: mm(cost.bow),
            twist: mm(cost.twist),
            face: mm(faceAllowance),
          }),
          gives: mm(value),
        },
      ],
      holds: phrase('Even, shallow curves over the whole board; measure a kinked board again after crosscutting.'),
      sources: ['geometry'],
    },
  };
}
