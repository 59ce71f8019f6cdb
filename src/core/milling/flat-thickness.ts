import { firstBad } from '../answer/bad-number.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import type { Outcome, Problem } from '../answer/problem.ts';
import { count, mm } from '../answer/quantity.ts';
import type { Worked, WorkingStep } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { lengths, size } from '../breakdown/sizes.ts';
import { type RoughBoard, reachableThickness, type WarpCost, warpCost } from './reachable-thickness.ts';

/** A blank crosscut from a board and ripped into equal strips before it is flattened. */
export interface FlatteningPlan {
  readonly blankLength: number;
  /** Into how many equal strips; 1 leaves it whole. */
  readonly rips: number;
  readonly faceAllowance: number;
}

/**
 * Why a rough board with such measurements can't be, or `undefined` when it can: sizes in mm above zero and within what
 * wood grows to, each kind of warp in mm no deeper than a fifth of its span.
 *
 * @param board sizes and warp, mm
 * @param of which board, as it goes on: ` of board B3`
 * @returns the problem, or undefined when the board can be
 * @valid sawn boards of furniture
 * @example boardProblem({ thickness: 27, width: 200, length: 2400, cup: 60, bow: 0 }) // => { field: 'cup' }
 * @source common practice
 */
export function boardProblem(board: RoughBoard & { readonly crook?: number }, of = ''): Problem | undefined {
  const { width, length, cup, bow, twist = 0, crook = 0 } = board;
  // Past a fifth of its span a curve is no longer shallow, and nobody would call such wood a board.
  const shallow = (span: number) => ({ least: 0, most: span / 5 });
  return firstBad([
    ...lengths(board, ['thickness', 'width', 'length'], size, { of }),
    ...lengths({ cup, twist }, ['cup', 'twist'], shallow(width), { of }),
    ...lengths({ bow, crook }, ['bow', 'crook'], shallow(length), { of }),
  ]);
}

/**
 * Thickness left in a blank once it is ripped into equal strips and flat on both faces, with its working.
 *
 * @param board rough thickness, width, length, cup, bow and twist, mm
 * @param plan blank length in mm, number of equal strips (kerf left out), the least taken off each face in mm
 * @returns mm, 0 when nothing is left
 * @valid even, shallow curves; a kink or a wind in one end only must be measured on the blank itself
 * @errors measurements that no board has, a blank longer than its board, strips that are no whole number
 * @example flatThickness(
 *   { thickness: 28, width: 250, length: 2400, cup: 2.5, bow: 6 },
 *   { blankLength: 1000, rips: 2, faceAllowance: 1 },
 * ) // => { value: 24.33 }
 * @source plane geometry
 */
export function flatThickness(board: RoughBoard, plan: FlatteningPlan): Outcome<Worked> {
  const { blankLength, rips, faceAllowance } = plan;
  const wrong =
    boardProblem(board) ??
    firstBad([
      ['blankLength', 'The blank', blankLength, 'mm', { above: 0, most: board.length }],
      ['rips', 'The number of strips', rips, 'count', { least: 1, most: 50, whole: true }],
      ['faceAllowance', 'What comes off a face', faceAllowance, 'mm', { least: 0, most: board.thickness / 2 }],
    ]);
  if (wrong) return wrong;
  const width = board.width / rips;
  const { value, working } = thicknessWorking(board, width, blankLength, faceAllowance);
  const ripping = workingStep('strip width', phrase`board width ${mm(board.width)} / ${count(rips)} strips`, mm(width));
  return { value, working: { ...working, steps: [ripping, ...working.steps] } };
}

/** `reachableThickness` with its working, for a piece of this width and length; mm. */
export function thicknessWorking(board: RoughBoard, width: number, length: number, faceAllowance: number): Worked {
  const cost = warpCost(board, width, length);
  const value = reachableThickness(board, width, length, faceAllowance);
  const lost = (warp: keyof WarpCost, by: Phrase): WorkingStep => workingStep(`lost to ${warp}`, by, mm(cost[warp]));
  const ofWidth = phrase`${mm(width)} / ${mm(board.width)}`;
  const ofLength = phrase`${mm(length)} / ${mm(board.length)}`;
  return {
    value,
    working: {
      steps: [
        lost('cup', phrase`cup ${mm(board.cup ?? 0)} x (${ofWidth}) squared`),
        lost('bow', phrase`bow ${mm(board.bow ?? 0)} x (${ofLength}) squared`),
        lost('twist', phrase`half the twist ${mm(board.twist ?? 0)} x ${ofWidth} x ${ofLength}`),
        workingStep(
          'thickness left',
          phrase`${mm(board.thickness)} - ${mm(cost.cup)} - ${mm(cost.bow)} - ${mm(cost.twist)} - 2 x ${mm(faceAllowance)}`,
          mm(value),
        ),
      ],
      holds: phrase`Even, shallow curves; measure a kinked blank itself.`,
      sources: ['geometry'],
    },
  };
}
