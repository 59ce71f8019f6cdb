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

/**
 * x with `matrix` x = `right`, by Gauss and Jordan's elimination.
 *
 * @param matrix symmetric and positive definite, as normal equations are: its pivots need no search
 * @param right as many entries as the matrix has rows
 * @returns x; not finite where the matrix is singular
 * @valid well-conditioned matrices of a few rows
 * @example solve([[4, 2], [2, 3]], [8, 8]) // => [1, 2]
 * @source linear algebra
 */
export function solve(matrix: Matrix, right: readonly number[]): number[] {
  let rows = matrix.map((row, index) => [...row, right[index] ?? 0]);
  for (let column = 0; column < matrix.length; column++) {
    const pivot = rows[column] ?? [];
    const scaled = pivot.map((value) => value / (pivot[column] ?? 0));
    rows = rows.map((row, at) =>
      at === column ? scaled : row.map((value, k) => value - (row[column] ?? 0) * (scaled[k] ?? 0)),
    );
  }
  return rows.map((row) => row.at(-1) ?? 0);
}
