import { type Problem, problem, within } from '../answer/problem.ts';
import type { Wood } from './part-movement.ts';

/** The surface of a part at which it meets another. */
export type Surface = 'edge' | 'face' | 'end' | 'mitre';

/** How a part's grain runs where it meets another: along the seam, or across it. */
export type GrainAtSeam = 'along' | 'across';

/** One of the two parts of a joint. */
export interface JointSide {
  readonly name: string;
  readonly surface: Surface;
  readonly grain: GrainAtSeam;
  readonly wood: Wood;
  /** What the part reads today, percent moisture. */
  readonly today: number;
}

/** Why a side can't be as it is said to be: along an edge the grain runs along the seam, along an end across it. */
export function jointSideProblem(field: string, { surface, grain }: JointSide): Problem | undefined {
  const wrong =
    surface === 'edge' && grain === 'across'
      ? problem('grain', 'Where the grain runs across the seam, it is an end.')
      : surface === 'end' && grain === 'along'
        ? problem('grain', 'Where the grain runs along the seam, it is an edge.')
        : undefined;
  return wrong && within(wrong, field);
}
