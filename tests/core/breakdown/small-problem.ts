import type { BreakdownProblem } from '../../../src/core/breakdown/problem-types.ts';

/** Three flat boards, one panel, four rails: every figure easy to follow by hand. */
export const smallProblem: BreakdownProblem = {
  shop: {
    ...{ jointerWidth: 200, planerWidth: 300, ripKerf: 3, crosscutKerf: 3, edgeAllowance: 4 },
    ...{ lengthAllowance: 50, faceAllowance: 1, minStrip: 50, maxStrip: 150 },
  },
  boards: [
    { id: 'B1', species: 'A', thickness: 27, width: 210, length: 2450, cup: 0, bow: 0 },
    { id: 'B2', species: 'A', thickness: 27, width: 180, length: 2450, cup: 0, bow: 0 },
    { id: 'B3', species: 'A', thickness: 27, width: 160, length: 2450, cup: 0, bow: 0 },
  ],
  parts: [
    { id: 'lid', species: 'A', quantity: 1, length: 980, width: 360, thickness: 19, panel: true },
    { id: 'rail', species: 'A', quantity: 4, length: 450, width: 76, thickness: 19, panel: false },
  ],
};
