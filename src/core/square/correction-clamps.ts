import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { mm, percent } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { lengthsOf, type Quadrilateral } from './quadrilateral.ts';
import type { Shape } from './shape-of.ts';

export interface ClampCorrection {
  readonly squeeze: 'diagonalAC' | 'diagonalBD';
  /** What the squeezed diagonal reads when the piece is square, mm. */
  readonly square: number;
  /** By how much it must shorten to get there, mm. */
  readonly shorten: number;
  /** How far to pull it, past square, so that it springs back to square, mm. */
  readonly pullTo: number;
}

/**
 * Which diagonal of a racked case or frame to squeeze and by how much, with what to add for spring-back.
 *
 * @param shape corners in mm
 * @param kind what shape it is
 * @param springBack the part of the movement that springs back, 0 to 0.8
 * @returns mm. The diagonal of the square piece is sqrt((AC² + BD²) / 2); the long one shortens by about half the
 *   difference of the two, and is pulled by that over (1 - springBack)
 * @valid joints that still give; opposite sides equal
 * @errors `shape` when it is not racked or square: no clamp cures unequal sides; `springBack` out of range
 * @example correctionClamps(corners([1000, 0], [1002.4, 663.324], [2.4, 663.324]), 'racked', 0.2).value
 *   // => { squeeze: 'diagonalAC', square: 1200.0, shorten: 2.0, pullTo: 1199.5 }
 * @source plane geometry (parallelogram law); over-correction is common practice
 */
export function correctionClamps(
  shape: Quadrilateral,
  kind: Exclude<Shape, 'undetermined'>,
  springBack: number,
): Outcome<Worked<ClampCorrection>> {
  if (kind !== 'racked' && kind !== 'square')
    return problem('shape', 'No clamp cures unequal sides. Make opposite parts equal first.');
  const bad = badNumber('springBack', 'Spring-back', springBack * 100, 'percent', { least: 0, most: 80 });
  if (bad) return bad;
  const { diagonalAC, diagonalBD } = lengthsOf(shape);
  const [squeeze, long] =
    diagonalAC >= diagonalBD ? (['diagonalAC', diagonalAC] as const) : (['diagonalBD', diagonalBD] as const);
  const square = Math.sqrt((diagonalAC ** 2 + diagonalBD ** 2) / 2);
  const shorten = long - square;
  const pull = shorten / (1 - springBack);
  return {
    value: {
      squeeze,
      square,
      shorten,
      pullTo: long - pull,
    },
    working: {
      steps: [
        workingStep(
          'diagonal when square',
          phrase`square root of half the sum of ${mm(diagonalAC)} squared and ${mm(diagonalBD)} squared`,
          mm(square),
        ),
        workingStep('must shorten by', phrase`${mm(long)} less ${mm(square)}`, mm(shorten)),
        workingStep('pull, with spring-back', phrase`${mm(shorten)} / (1 - ${percent(springBack * 100)})`, mm(pull)),
      ],
      holds: phrase`While the glue lets the joints move.`,
      sources: ['geometry', 'common-practice'],
    },
  };
}
