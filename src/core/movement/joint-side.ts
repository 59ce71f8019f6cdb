import type { Wood } from './part-movement.ts';

/** The surface of a part at which it meets another. */
export type Surface = 'edge' | 'face' | 'end' | 'mitre';

/** How a part's grain runs where it meets another: along the seam, or across it. */
export type GrainAtSeam = 'along' | 'across';

/** What a surface leaves the grain only one way to run along the seam; a face and a mitre leave it both. */
export const settledGrain: Readonly<Partial<Record<Surface, GrainAtSeam>>> = { edge: 'along', end: 'across' };

/** One of the two parts of a joint. */
export interface JointSide {
  readonly name: string;
  readonly surface: Surface;
  readonly grain: GrainAtSeam;
  readonly wood: Wood;
}
