import type { Board } from '../../src/core/lumber/board.ts';
import type { Wood } from '../../src/core/movement/part-movement.ts';
import type { Point, Quadrilateral } from '../../src/core/square/quadrilateral.ts';
import { findSpecies } from '../../src/tables/species.ts';

/** What worked examples in docstrings may name beside the exports of the core and of the tables. */

/** Flat-sawn black cherry. */
export const cherry = { figures: findSpecies('cherry, black'), cut: 'flat' } as Wood;
/** Percent of moisture today and in both seasons. */
export const seasons = { today: 8, dry: 6, wet: 11 };
/** 8/4, 6 1/4 in by 8 ft. */
export const board: Board = { thickness: { quarters: 8 }, width: 158.75, length: 2438.4 };
/** A four-cornered piece with A at the origin, from its other corners in mm. */
export const corners = (...[B, C, D]: readonly (readonly [number, number])[]): Quadrilateral => {
  const [b, c, d] = [B, C, D].map(([x, y] = [0, 0]) => ({ x, y })) as [Point, Point, Point];
  return { A: { x: 0, y: 0 }, B: b, C: c, D: d };
};
