import { badNumber } from '../answer/bad-number.ts';
import { type Problem, problem } from '../answer/problem.ts';
import type { Shrinkage } from './movement-figures.ts';

/**
 * Why a wood's shrinkage figures can't be right.
 *
 * @param shrinkage from green to ovendry, percent: radial, tangential and volumetric, each may be missing
 * @returns undefined when they can be right, or a `Problem` on the figure: not above 0 or above 40 percent; radial
 *   above tangential; the volume's below one of them; none given
 * @valid solid wood; every wood of the handbook's tables shrinks more along the rings than across them, and its volume
 *   more than either
 * @example shrinkageProblem({ radial: 7.1, tangential: 3.7 }) // => { field: 'radial' }
 * @source Wood handbook (FPL-GTR-190), Tables 4-3 and 4-4: 2.1 to 17.2 % among the woods of this app's table; 40 % is far
 *   above any wood
 */
export function shrinkageProblem(shrinkage: Omit<Shrinkage, 'source'>): Problem | undefined {
  const { radial, tangential, volumetric } = shrinkage;
  for (const direction of ['tangential', 'radial', 'volumetric'] as const) {
    const value = shrinkage[direction];
    const wrong =
      value === undefined
        ? undefined
        : badNumber(direction, `The ${direction} shrinkage`, value, 'percent', { above: 0, most: 40 });
    if (wrong) return wrong;
  }
  if (radial !== undefined && tangential !== undefined && radial > tangential)
    return problem('radial', 'Wood shrinks more tangentially. Are the two swapped?');
  if (volumetric !== undefined && volumetric < Math.max(radial ?? 0, tangential ?? 0))
    return problem('volumetric', 'The volume shrinks more than width or thickness alone.');
  if ((radial ?? tangential ?? volumetric) === undefined)
    return problem('tangential', 'Type at least one figure. The volumetric alone gives a guess.');
  return undefined;
}
