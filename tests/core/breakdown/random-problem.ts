import type { BreakdownProblem, Part, RoughBoard } from '../../../src/core/breakdown/problem-types.ts';
import { pick, seededRandom } from '../../../src/core/breakdown/random.ts';

/** A problem of a small shop, the same for the same seed: stock is how much more wood there is than finished parts. */
export function randomProblem(seed: number, kinds: number, stock: number): BreakdownProblem {
  const random = seededRandom(seed);
  const one = (from: readonly number[]): number => from[pick(random, from.length)] ?? 0;
  const between = (least: number, most: number) => Math.round(least + random() * (most - least));
  const tenth = (least: number, most: number) => between(least * 10, most * 10) / 10;
  const shop = {
    jointerWidth: one([152, 203, 254]),
    planerWidth: one([317, 330, 508]),
    ripKerf: one([0, 2.4, 3.2]),
    crosscutKerf: one([2.4, 3.2]),
    edgeAllowance: 3.2,
    lengthAllowance: one([38, 50, 75]),
    faceAllowance: one([0.8, 1.2]),
    minStrip: one([45, 50, 60]),
    maxStrip: one([110, 130, 150, 200]),
  };
  const parts = Array.from({ length: kinds }, (_, index): Part => {
    const common = { id: `P${index + 1}`, species: 'A', thickness: one([18, 20, 22]) };
    return random() < 0.6
      ? { ...common, quantity: between(1, 3), length: between(400, 1400), width: between(250, 700), panel: true }
      : { ...common, quantity: between(1, 6), length: between(250, 1000), width: between(50, 140), panel: false };
  });
  const finished = parts.reduce((sum, part) => sum + part.quantity * part.length * part.width, 0);
  const boards: RoughBoard[] = [];
  for (let area = 0; area < finished * stock; ) {
    const board = {
      id: `B${boards.length + 1}`,
      species: 'A',
      thickness: tenth(26.5, 29.5),
      width: between(120, 330),
      length: one([2440, 3060, 3700]) + between(0, 50),
      cup: tenth(0, 3),
      bow: tenth(0, 8),
    };
    boards.push(board);
    area += board.width * board.length;
  }
  return { shop, boards, parts };
}
