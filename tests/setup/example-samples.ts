import type { Blank, BreakdownPlan, BreakdownProblem } from '../../src/core/breakdown/problem-types.ts';
import type { Board } from '../../src/core/lumber/board.ts';
import type { Wood } from '../../src/core/movement/part-movement.ts';
import type { Point, Quadrilateral } from '../../src/core/square/quadrilateral.ts';
import { findSpecies } from '../../src/tables/species.ts';
import { smallProblem } from '../core/breakdown/small-problem.ts';
import { blank, board as millingBoard, millingInput, part, scenarios } from '../core/milling/shops-and-stacks.ts';

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

/** Three boards of 210, 180 and 160 by 2450 for a lid of 360 and four rails: a breakdown whose figures are easy to follow. */
export { smallProblem };
/** The lid alone, and one board that is too short for all of it. */
export const shortLid: BreakdownProblem = {
  ...smallProblem,
  boards: smallProblem.boards.slice(0, 1).map((one) => ({ ...one, length: 1100 })),
  parts: smallProblem.parts.slice(0, 1),
};
/** One board of 200 by 1000 and one rail of 100 by 400; no kerf, no allowances. */
export const oneRail: BreakdownProblem = {
  shop: {
    ...smallProblem.shop,
    ...{ ripKerf: 0, crosscutKerf: 0, edgeAllowance: 0, lengthAllowance: 0, faceAllowance: 0 },
  },
  boards: smallProblem.boards.slice(0, 1).map((one) => ({ ...one, width: 200, length: 1000 })),
  parts: smallProblem.parts.slice(1).map((one) => ({ ...one, quantity: 1, width: 100, length: 400 })),
};
/** A plan of these blanks; `blank(board, start, length, ...strips)` with strips of `[width, part, unit]`. */
export const planOf = (...blanks: readonly Blank[]): BreakdownPlan => ({ blanks, short: [] });
export { blank };

/** A lid 520 wide from two boards of 300; jointer 203, planer 330. */
export const wideLid = scenarios['a wide and long panel, a full shop'];
/** Three short cleats from one narrow board. */
export const cleats = scenarios['short cleats'];
/** A shelf of 900 by 150 by 20 from one 4/4 board of 180 by 2400, in a shop with everything. */
export const oneShelf = millingInput({
  boards: [millingBoard('B1', { thickness: 25.4 })],
  parts: [part('shelf', 900, 150, 20)],
  blanks: [blank('B1', 0, 950, [154, 'shelf'])],
});
