/** Moisture between which the coefficients of dimensional change hold, percent. */
export const coefficientRange = { least: 6, most: 14 };

/**
 * Change of a size by the coefficient of dimensional change (Eq. 13-2): size x coefficient x change of moisture.
 *
 * @param size in mm at `from`; coefficient per percent; from and to in percent
 * @returns change in mm, swelling positive
 *
 * Valid: both moistures within 6 % to 14 %.
 * Example: 232 mm, 0.00245, from 8 % to 11 %: 1.7 mm.
 * Source: Wood handbook (FPL-GTR-190), Eq. 13-2 and Table 13-5.
 */
export function changeByCoefficient(size: number, coefficient: number, from: number, to: number): number {
  return size * coefficient * (to - from);
}
