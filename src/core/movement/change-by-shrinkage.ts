/**
 * Change of a size by the shrinkage from green to ovendry (Eq. 13-3): size x change of moisture over
 * (30 x 100 / shrinkage - 30 + from).
 *
 * @param size mm at `from`
 * @param shrinkage percent (above 0, below 100)
 * @param from percent
 * @param to percent
 * @returns change in mm, swelling positive
 * @valid neither moisture above 30 %; shrinkage is taken as even from 30 % down
 * @example changeByShrinkage(232, 7, 8, 11) // => 1.71
 * @source Wood handbook (FPL-GTR-190), Eq. 13-3 and Tables 4-3, 4-4
 */
export function changeByShrinkage(size: number, shrinkage: number, from: number, to: number): number {
  return (size * (to - from)) / (3000 / shrinkage - 30 + from);
}

/**
 * The shrinkage that a coefficient of dimensional change stands for: the handbook's C = (S/3000) / (1 - 20 S/3000),
 * turned round.
 *
 * @param coefficient per percent
 * @returns shrinkage in percent
 * @valid as an approximation where only the coefficient is tabulated; both tables agree so but for green ash
 * @example shrinkageFromCoefficient(0.00248) // => 7.1
 * @source Wood handbook (FPL-GTR-190), note to Eq. 13-3
 */
export function shrinkageFromCoefficient(coefficient: number): number {
  return (3000 * coefficient) / (1 + 20 * coefficient);
}
