import { badNumber } from '../answer/bad-number.ts';
import { joined } from '../answer/joined.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome, type Problem, problem } from '../answer/problem.ts';
import { mm, percent } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { type Differential, differentialMovement } from './differential-movement.ts';
import { widestPart } from './dimensional-change.ts';
import { type JointSide, settledGrain } from './joint-side.ts';
import type { Seasons } from './seasons.ts';

/**
 * - `glue`: the whole joint
 * - `glue-stretch`: a short stretch; the rest floats
 * - `float`: slots, buttons or brackets, at most one fixed point
 * - `align`: pins, splines or loose tenons without glue
 * - `mechanical`: glue alone doesn't hold; a tenon, dovetails, dowels, screws
 */
export type JointAdvice = 'glue' | 'glue-stretch' | 'float' | 'align' | 'mechanical';

export interface JointInput {
  readonly sides: readonly [JointSide, JointSide];
  /** Along the seam, mm. */
  readonly length: number;
  /** Across the seam, mm: for faces that lie on one another; none for an edge or an end. */
  readonly breadth?: number;
  readonly seasons: Seasons;
}

/** How far the parts would move apart along the seam, and what to do about it. */
export interface JointVerdict extends Differential {
  readonly advice: JointAdvice;
  readonly reason: Phrase;
  /** How far they would move apart in either season, along the seam or across it, mm. */
  readonly worst: number;
  /** Whether the joint must let the parts move: `worst` is above the limit. */
  readonly moves: boolean;
  /** The longest stretch along the seam that stays within the limit, mm; 0 where none does. */
  readonly glueStretch: number;
}

/** What 75 mm of flat-sawn cherry moves over 3 % of moisture, mm: as wide as the trade glues across the grain without worry. */
const limit = 0.6;

/** From this part of the seam's length on, a stretch is worth gluing. */
const worthwhile = 1 / 3;

/**
 * Whether two parts may be glued where they meet, and why.
 *
 * @param input both parts with surface, grain at the seam and wood; length and breadth of contact (mm); moisture today
 *   and in the seasons (percent)
 * @returns advice, reason, and how far the parts would move apart (mm)
 * @valid flat contact of solid wood. The limit of 0.6 mm, and the third of the seam from which a stretch is worth gluing,
 *   are common practice, not strength calculations
 * @errors a `Problem` on `sides`, `length`, `breadth`, or as `partMovement`
 * @example jointVerdict({
 *   sides: [
 *     { name: 'cleat', surface: 'face', grain: 'along', wood: cherry },
 *     { name: 'lid', surface: 'face', grain: 'across', wood: cherry },
 *   ],
 *   length: 400,
 *   seasons,
 * }).value // => { advice: 'float', worst: 2.98 }
 * @source movement by Wood handbook (FPL-GTR-190), chapter 13; the verdict is common practice
 */
export function jointVerdict({ sides, length, breadth = 0, seasons }: JointInput): Outcome<Worked<JointVerdict>> {
  const wrong =
    sidesProblem(sides) ??
    badNumber('length', 'The length', length, 'mm', { above: 0, most: widestPart }) ??
    badNumber('breadth', 'The breadth', breadth, 'mm', { least: 0, most: widestPart });
  if (wrong) return wrong;
  const alongSeam = differentialMovement(sides, length, seasons, 'across');
  if (isProblem(alongSeam)) return alongSeam;
  const acrossSeam = differentialMovement(sides, breadth, seasons, 'along');
  if (isProblem(acrossSeam)) return acrossSeam;

  const [along, across] = [alongSeam, acrossSeam].map(({ value }) => Math.max(value.shrink, value.swell)) as [
    number,
    number,
  ];
  const worst = Math.max(along, across);
  const glueStretch = across <= limit && along > 0 ? (length * limit) / along : 0;
  const [advice, reason] = adviceFor(sides, { length, worst, glueStretch });
  const { dry, wet } = seasons;
  return {
    value: {
      ...alongSeam.value,
      advice,
      reason,
      worst,
      moves: worst > limit,
      glueStretch,
      estimated: alongSeam.value.estimated || acrossSeam.value.estimated,
    },
    working: joined(alongSeam.working, {
      steps: [
        ...acrossSeam.working.steps,
        workingStep(
          'movement apart',
          phrase`the larger difference of both changes, at ${percent(dry)} and ${percent(wet)}`,
          mm(worst),
        ),
      ],
      holds: phrase`Flat contact of solid wood. The limit of ${mm(limit)} is common practice.`,
      sources: [...acrossSeam.working.sources, 'common-practice'],
    }),
  };
}

/** The advice, and why; what to do stands above as the verdict: the words say only what that leaves open. */
function adviceFor(
  [first, second]: JointInput['sides'],
  found: { readonly length: number; readonly worst: number; readonly glueStretch: number },
): readonly [JointAdvice, Phrase] {
  const crossing = first.grain !== second.grain;
  const moves = found.worst > limit;
  const worst = mm(found.worst);
  const alike = crossing
    ? phrase`The grain crosses, but they move only ${worst} apart, which a glue line bears.`
    : phrase`Long grain to long grain: they move alike.`;
  const apart = crossing
    ? phrase`The grain crosses: over ${mm(found.length)} they would move ${worst} apart, more than a glue line bears.`
    : phrase`They run the same way but don’t move alike: ${worst} apart, more than a glue line bears.`;
  if (first.surface === 'mitre') {
    if (crossing) {
      const [runsOn, crosses] = first.grain === 'across' ? [first, second] : [second, first];
      return [
        'align',
        phrase`The grain of ${runsOn.name} runs on around the corner, that of ${crosses.name} crosses: they would move ${worst} apart, and end grain meets long grain.`,
      ];
    }
    if (moves) return ['align', apart];
    return [
      'glue',
      first.grain === 'across'
        ? phrase`The grain runs on around the mitre, so they move alike. Mitred ends are weak: add a spline or loose tenons.`
        : alike,
    ];
  }
  const ends = [first, second].filter(({ surface }) => surface === 'end').length;
  if (ends > 0) {
    const how = moves
      ? phrase`, and let it move: ${worst} apart.`
      : ': tenon, dovetails, dowels or screws. They move too little to matter.';
    return [
      'mechanical',
      phrase`End grain to ${ends === 2 ? 'end' : 'long'} grain: glue alone doesn’t hold. Use a mechanical joint${how}`,
    ];
  }
  if (!moves) return ['glue', alike];
  return found.glueStretch >= worthwhile * found.length
    ? ['glue-stretch', phrase`${apart} Glue one stretch of at most ${mm(found.glueStretch)} and let the rest float.`]
    : ['float', phrase`${apart} Fix one point and let the rest float.`];
}

function sidesProblem(sides: JointInput['sides']): Problem | undefined {
  if (sides.some(({ surface, grain }) => (settledGrain[surface] ?? grain) !== grain))
    return problem('sides', 'An edge runs along its grain, an end across it.');
  return (sides[0].surface === 'mitre') === (sides[1].surface === 'mitre')
    ? undefined
    : problem('sides', 'A mitre meets a mitre. Choose both.');
}
