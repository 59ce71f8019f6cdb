import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { count, mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { longest } from './check-readings.ts';

export type BoxSizes = 'outside' | 'inside';

export interface FoldedBox {
  /** Long-point lengths in the order they lie in the board, so that the grain runs on round three corners, mm. */
  readonly longPoints: readonly [front: number, right: number, back: number, left: number];
  /** Their short-point lengths, mm. */
  readonly shortPoints: readonly [front: number, right: number, back: number, left: number];
  /** Board needed from the first long point to the last, mm. */
  readonly board: number;
}

/**
 * The parts of a mitred box cut one after the other from one board.
 *
 * @param length mm
 * @param width mm
 * @param thickness mm
 * @param given whether length and width are the outside or the inside of the box
 * @param loss mm of the outer face lost between two parts (kerf and what is trimmed)
 * @returns mm. Long points are the outside of the box, short points its inside, two thicknesses less
 * @valid four corners of 90 degrees, all parts of one thickness
 * @errors the field that is no length; `width` when no inside is left
 * @example foldedBox(300, 200, 12, 'inside', 4).value // => { longPoints: [324, 224, 324, 224], board: 1108 }
 * @source plane geometry; the order is common practice
 */
export function foldedBox(
  length: number,
  width: number,
  thickness: number,
  given: BoxSizes,
  loss: number,
): Outcome<Worked<FoldedBox>> {
  const both = 2 * thickness;
  const outside = given === 'outside';
  // Two ends must leave room between them.
  const sizes = { above: outside ? both : 0, most: longest };
  const bad =
    badNumber('thickness', 'The thickness', thickness, 'mm', { above: 0, most: 300 }) ??
    badNumber('loss', 'The loss at a cut', loss, 'mm', { least: 0, most: 100 }) ??
    badNumber('length', 'The length', length, 'mm', sizes) ??
    badNumber('width', 'The width', width, 'mm', sizes);
  if (bad) return bad;
  const [long, short] = outside ? [0, -both] : [both, 0];
  const parts = (by: number): FoldedBox['longPoints'] => [length + by, width + by, length + by, width + by];
  const longPoints = parts(long);
  const board = 2 * (longPoints[0] + longPoints[1]) + 3 * loss;
  const by = outside ? phrase`the outside of the box` : phrase`inside and twice ${mm(thickness)}`;
  return {
    value: { longPoints, shortPoints: parts(short), board },
    working: {
      steps: [
        workingStep('long point of front and back', by, mm(longPoints[0])),
        workingStep('long point of the ends', by, mm(longPoints[1])),
        workingStep('board needed', phrase`four long points and ${count(3)} losses of ${mm(loss)}`, mm(board)),
      ],
      holds: phrase`Square corners, one thickness. Mark the order on the face before cutting.`,
      sources: ['geometry', 'common-practice'],
    },
  };
}
