/** Moisture between which the coefficients of dimensional change hold, percent. */
export const coefficientRange = { least: 6, most: 14 };

/**
 * Change of a size by the coefficient of dimensional change (Eq. 13-2): size x coefficient x change of moisture.
 *
 * @param size mm at `from`
 * @param coefficient per percent
 * @param from percent
 * @param to percent
 * @returns change in mm, swelling positive
 * @valid both moistures within 6 % to 14 %
 * @example changeByCoefficient(232, 0.00245, 8, 11) // => 1.7
 * @source Wood handbook (FPL-GTR-190), Eq. 13-2 and Table 13-5
 */
export function changeByCoefficient(size: number, coefficient: number, from: number, to: number): number {
  return size * coefficient * (to - from);
}
