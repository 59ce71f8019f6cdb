import type { SourceId } from '../core/answer/source-id.ts';

/** The moisture that wood for inside a building should have when it is worked. */
export interface InteriorTarget {
  readonly id: string;
  readonly name: string;
  /** Average of the lot, percent. */
  readonly percent: number;
  readonly source: SourceId;
  /** Where single pieces may lie, percent. */
  readonly band: { readonly least: number; readonly most: number; readonly source: SourceId };
}

function target(id: string, name: string, percent: number, least: number, most: number): InteriorTarget {
  return { id, name, percent, source: 'wood-handbook', band: { least, most, source: 'wood-handbook-memory' } };
}

/** Averages: Wood handbook (FPL-GTR-190), Figure 13-1, United States. Bands for single pieces: the same chapter, recalled. */
export const interiorTargets: readonly InteriorTarget[] = [
  target('most', 'Most areas', 8, 6, 10),
  target('dry', 'Dry inland areas', 6, 4, 9),
  target('damp', 'Damp, warm coasts', 11, 8, 13),
];
