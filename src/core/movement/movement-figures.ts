import type { SourceId } from '../answer/source-id.ts';

/** Change of width per width and percent of moisture, within 6 % to 14 %. */
export interface DimensionalCoefficients {
  readonly radial: number;
  readonly tangential: number;
  readonly source: SourceId;
}

/** Shrinkage from green to ovendry, in percent of the green size. */
export interface Shrinkage {
  readonly radial?: number;
  readonly tangential?: number;
  readonly volumetric?: number;
  readonly source: SourceId;
}

/** What is known of how a wood moves; a species of the tables, or one that the maker added. */
export interface MovementFigures {
  readonly coefficients?: DimensionalCoefficients;
  readonly shrinkage?: Shrinkage;
}
