/** No tape, rule or stick reads finer than this, mm; a smaller precision, 0 too, is taken as this. */
const finestPrecision = 0.01;

/** The reading error that verdicts use, mm. */
export function usedPrecision(precision: number): number {
  return Math.max(precision, finestPrecision);
}

/** Whether a needed reading error lies within the precision, leaving room for rounding in the arithmetic. */
export function explains(precision: number, needed: number): boolean {
  return needed <= precision * (1 + 1e-6);
}
