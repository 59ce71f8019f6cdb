import { badNumber } from '../answer/bad-number.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome, type Problem, problem, within } from '../answer/problem.ts';
import { mm, percent } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { type Differential, differentialMovement } from './differential-movement.ts';
import { widestPart } from './dimensional-change.ts';
import { jointReason } from './joint-reason.ts';
import { type JointSide, jointSideProblem } from './joint-side.ts';
import { type SeasonMoisture, seasonsProblem } from './seasons.ts';

/**
 * - `glue`: the whole joint
 * - `glue-stretch`: a short stretch; the rest floats
 * - `float`: slots, buttons or brackets, at most one fixed point
 * - `align`: pins, splines or loose tenons without glue
 * - `mechanical`: glue alone doesn't hold; a tenon, dovetails, dowels, screws
 */
export type JointAdvice = 'glue' | 'glue-stretch' | 'float' | 'align' | 'mechanical';

export interface JointInput {
  readonly first: JointSide;
  readonly second: JointSide;
  /** Along the seam, mm. */
  readonly length: number;
  /** Across the seam, mm: for faces that lie on one another; none for an edge or an end. */
  readonly breadth?: number;
  readonly seasons: SeasonMoisture;
  /** How far the parts may move apart under glue, mm. */
  readonly limit?: number;
}

export interface JointVerdict {
  readonly advice: JointAdvice;
  readonly reason: Phrase;
  /** How far the parts would move apart in the dry and in the wet season, mm, in the direction in which it is more. */
  readonly dry: number;
  readonly wet: number;
  readonly worst: number;
  readonly limit: number;
  /** Whether the joint must let the parts move: `worst` is above the limit. */
  readonly moves: boolean;
  /** The longest stretch along the seam that stays within the limit, mm; for `glue-stretch` and `float`. */
  readonly glueStretch?: number;
  /** Whether it rests on a guess from the volume's shrinkage. */
  readonly estimated: boolean;
}

/** What 75 mm of flat-sawn cherry moves over 3 % of moisture: as wide as the trade glues across the grain without worry. */
const usualLimit = 0.6;

/** From this part of the seam's length on, a stretch is worth gluing. */
const worthwhile = 1 / 3;

/**
 * Whether two parts may be glued where they meet, and why.
 *
 * @param input both parts with surface, grain at the seam, wood and moisture today (percent); length and breadth of
 *   contact (mm); moisture in the seasons (percent); the limit (mm, 0.6 unless told otherwise)
 * @returns advice, reason, and how far the parts would move apart (mm)
 * @valid flat contact of solid wood. The limit, and the third of the seam from which a stretch is worth gluing, are
 *   common practice, not strength calculations
 * @errors a `Problem` on the side, `length`, `breadth`, `limit` or `seasons`
 * @example jointVerdict({
 *   first: { name: 'cleat', surface: 'face', grain: 'along', wood: cherry, today: 8 },
 *   second: { name: 'lid', surface: 'face', grain: 'across', wood: cherry, today: 8 },
 *   length: 400,
 *   seasons,
 * }).value // => { advice: 'float', worst: 2.98 }
 * @source movement by Wood handbook (FPL-GTR-190), chapter 13; the verdict is common practice
 */
export function jointVerdict(input: JointInput): Outcome<Worked<JointVerdict>> {
  const { first, second, length, breadth = 0, seasons, limit = usualLimit } = input;
  const wrong = jointProblem(input, breadth, limit);
  if (wrong) return wrong;
  const alongSeam = differentialMovement([first, second], length, seasons, 'across');
  if (isProblem(alongSeam)) return alongSeam;
  const acrossSeam = breadth > 0 ? differentialMovement([first, second], breadth, seasons, 'along') : undefined;
  if (isProblem(acrossSeam)) return acrossSeam;

  const along = Math.max(alongSeam.dry, alongSeam.wet);
  const across = acrossSeam ? Math.max(acrossSeam.dry, acrossSeam.wet) : 0;
  const decisive: Differential = acrossSeam && across > along ? acrossSeam : alongSeam;
  const worst = Math.max(along, across);
  const stretch = along > limit && across <= limit ? (length * limit) / along : undefined;
  const advice = adviceFor(first, second, { worst, limit, stretch, length });
  return {
    value: {
      advice,
      reason: jointReason(advice, input, { worst, limit, stretch }),
      dry: decisive.dry,
      wet: decisive.wet,
      worst,
      limit,
      moves: worst > limit,
      ...((advice === 'glue-stretch' || advice === 'float') && stretch !== undefined && { glueStretch: stretch }),
      estimated: alongSeam.estimated || (acrossSeam?.estimated ?? false),
    },
    working: {
      steps: [
        ...alongSeam.steps,
        ...(acrossSeam?.steps ?? []),
        {
          finds: 'movement apart',
          by: phrase('the larger difference of both changes, at {dry} and {wet}', {
            dry: percent(seasons.dry),
            wet: percent(seasons.wet),
          }),
          gives: mm(worst),
        },
      ],
      holds: phrase('Flat contact of solid wood. The limit of {limit} is common practice.', {
        limit: mm(limit),
      }),
      sources: [...new Set([...alongSeam.sources, ...(acrossSeam?.sources ?? []), 'common-practice' as const])],
    },
  };
}

function adviceFor(
  first: JointSide,
  second: JointSide,
  { worst, limit, stretch, length }: { worst: number; limit: number; stretch: number | undefined; length: number },
): JointAdvice {
  if (first.surface === 'mitre') return first.grain === second.grain && worst <= limit ? 'glue' : 'align';
  if (first.surface === 'end' || second.surface === 'end') return 'mechanical';
  if (worst <= limit) return 'glue';
  return stretch !== undefined && stretch >= worthwhile * length ? 'glue-stretch' : 'float';
}

function jointProblem(
  { first, second, length, seasons }: JointInput,
  breadth: number,
  limit: number,
): Problem | undefined {
  return (
    jointSideProblem('first', first) ??
    jointSideProblem('second', second) ??
    ((first.surface === 'mitre') !== (second.surface === 'mitre')
      ? problem('second.surface', 'A mitre meets a mitre. Choose both.')
      : undefined) ??
    badNumber('length', 'The length', length, 'mm', { above: 0, most: widestPart }) ??
    badNumber('breadth', 'The breadth', breadth, 'mm', { least: 0, most: widestPart }) ??
    badNumber('limit', 'The limit', limit, 'mm', { least: 0, most: 10 }) ??
    sideSeasonsProblem('first', first, seasons) ??
    sideSeasonsProblem('second', second, seasons)
  );
}

function sideSeasonsProblem(field: string, { today }: JointSide, seasons: SeasonMoisture): Problem | undefined {
  const wrong = seasonsProblem({ ...seasons, today });
  if (!wrong) return undefined;
  return wrong.field === 'seasons.today' ? within({ ...wrong, field: 'today' }, field) : wrong;
}
