/** A dense matrix, row by row; the ones here have at most six rows. */
export type Matrix = readonly (readonly number[])[];

/**
 * All determinants that sets of a matrix's rows make with as many of its first columns.
 *
 * @param matrix at most 30 rows
 * @returns by set, bit `n` of the index standing for row `n`: index 5 holds that of rows 0 and 2 in columns 0 and 1
 * @valid sets of more rows than there are columns give 0
 * @example minors([[1, 2], [3, 4]]) // => [1, 1, 3, -2]
 * @source Laplace's expansion along the last column, each smaller determinant computed once
 */
export function minors(matrix: Matrix): number[] {
  const found = [1];
  for (let set = 1; set < 1 << matrix.length; set++) {
    const column = rowsIn(set) - 1;
    let sum = 0;
    let sign = 1;
    for (let row = matrix.length - 1; row >= 0; row--) {
      if ((set & (1 << row)) === 0) continue;
      sum += sign * (matrix[row]?.[column] ?? 0) * (found[set ^ (1 << row)] ?? 0);
      sign = -sign;
    }
    found.push(sum);
  }
  return found;
}

/** How many rows a set holds. */
export function rowsIn(set: number): number {
  let count = 0;
  for (let rest = set; rest > 0; rest &= rest - 1) count++;
  return count;
}

/** x with `matrix` x = `right`, or undefined when the matrix is singular; Gaussian elimination, the largest pivot first. */
export function solve(matrix: Matrix, right: readonly number[]): number[] | undefined {
  const order = matrix.length;
  const open = matrix.map((row, index) => [...row, right[index] ?? 0]);
  const done: number[][] = [];
  for (let column = 0; column < order; column++) {
    const pivot = open.reduce((best, row) => (Math.abs(row[column] ?? 0) > Math.abs(best[column] ?? 0) ? row : best));
    const size = pivot[column];
    if (!size) return undefined;
    open.splice(open.indexOf(pivot), 1);
    done.push(pivot);
    for (const row of open) {
      const share = (row[column] ?? 0) / size;
      for (let k = column; k <= order; k++) row[k] = (row[k] ?? 0) - share * (pivot[k] ?? 0);
    }
  }
  const x = new Array<number>(order).fill(0);
  for (let row = order - 1; row >= 0; row--) {
    const coefficients = done[row] ?? [];
    let rest = coefficients[order] ?? 0;
    for (let k = row + 1; k < order; k++) rest -= (coefficients[k] ?? 0) * (x[k] ?? 0);
    x[row] = rest / (coefficients[row] ?? 1);
  }
  return x;
}
