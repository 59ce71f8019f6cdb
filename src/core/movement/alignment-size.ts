import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { degrees, mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';

export type AlignmentKind = 'loose-tenon' | 'dowel' | 'spline';

/** Rules of thumb (common practice): thickness as a share of the stock's, depth in each part as a multiple of that. */
const rules: Readonly<Record<AlignmentKind, { readonly share: number; readonly said: string; readonly deep: number }>> =
  {
    'loose-tenon': { share: 1 / 3, said: 'a third', deep: 3 },
    dowel: { share: 1 / 3, said: 'a third', deep: 3 },
    spline: { share: 1 / 4, said: 'a quarter', deep: 1.5 },
  };

export interface AlignmentSizeInput {
  readonly kind: AlignmentKind;
  /** Of the stock, mm. */
  readonly thickness: number;
  /** Between the joint's face and the outer face of the part, in degrees: 90 for an edge, 45 for a mitre. */
  readonly angle: number;
}

/** Wood to leave to any face, mm (common practice). */
const remain = 4;

export interface AlignmentSize {
  /** Of the tenon, dowel or spline, mm. */
  readonly thickness: number;
  /** In each part, square to the joint's face, mm. */
  readonly depth: number;
  /** From the inner corner of a mitre, or from a face of an edge, to the middle, along the joint's face, mm. */
  readonly offset: number;
}

/**
 * How thick and how deep a loose tenon, dowel or spline may be, and where it sits in the joint's face. In a mitre it
 * sits near the inner corner, where the wood is deepest.
 *
 * @param input kind; thickness of the stock in mm; angle in degrees
 * @returns thickness, depth in each part, and offset, mm
 * @valid angles from 20 to 90 degrees, both parts alike
 * @errors a `Problem` on `thickness` when the wood left allows none; on `angle`
 * @example alignmentSize({ kind: 'loose-tenon', thickness: 21, angle: 90 }).value
 *   // => { thickness: 7, depth: 21, offset: 10.5 }
 * @source thickness and depth by rule of thumb are common practice; the room in a mitre is geometry
 */
export function alignmentSize({ kind, thickness, angle }: AlignmentSizeInput): Outcome<Worked<AlignmentSize>> {
  const wrong =
    badNumber('thickness', 'The thickness', thickness, 'mm', { above: 0, most: 300 }) ??
    badNumber('angle', 'The angle', angle, 'degrees', { least: 20, most: 90 });
  if (wrong) return wrong;
  const { share, said, deep } = rules[kind];
  const thick = thickness * share;
  const slope = (angle * Math.PI) / 180;
  const face = thickness / Math.sin(slope);
  const offset = angle === 90 ? face / 2 : remain + thick / 2;
  // The corner of the mortise that lies nearest the outer face is the first to break through.
  const outerCheek = face - offset - thick / 2;
  const room = angle === 90 ? Number.POSITIVE_INFINITY : (outerCheek * Math.sin(slope) - remain) / Math.cos(slope);
  const depth = Math.min(thick * deep, room);
  if (outerCheek < remain || depth < thick / 2)
    return problem(
      'thickness',
      phrase`No room in ${mm(thickness)} with ${mm(remain)} left to every face. Use glue blocks.`,
    );
  return {
    value: { thickness: thick, depth, offset },
    working: {
      steps: [
        workingStep('thickness', phrase`${said} of ${mm(thickness)}`, mm(thick)),
        workingStep(
          'depth in each part',
          phrase`${deep} × thickness, or what ${degrees(angle)} allows with ${mm(remain)} left`,
          mm(depth),
        ),
      ],
      holds: phrase`Parts of one thickness. Try it on scrap first.`,
      sources: ['common-practice', 'geometry'],
    },
  };
}
