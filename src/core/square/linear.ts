/** A dense matrix, row by row; the ones here have at most six rows. */
export type Matrix = readonly (readonly number[])[];

interface Elimination {
  readonly rows: number[][];
  readonly determinant: number;
}

/** Gaussian elimination with the largest pivot first; columns past the rows' count are carried along. */
function eliminate(matrix: Matrix): Elimination {
  const rows = matrix.map((row) => [...row]);
  let determinant = 1;
  for (let column = 0; column < rows.length; column++) {
    const size = (row: number) => Math.abs(rows[row]?.[column] ?? 0);
    let best = column;
    for (let row = column + 1; row < rows.length; row++) if (size(row) > size(best)) best = row;
    const pivotRow = rows[best];
    const here = rows[column];
    if (!pivotRow || !here) break;
    const pivot = pivotRow[column] ?? 0;
    if (pivot === 0) return { rows, determinant: 0 };
    if (best !== column) {
      rows[column] = pivotRow;
      rows[best] = here;
      determinant = -determinant;
    }
    determinant *= pivot;
    for (const row of rows.slice(column + 1)) {
      const share = (row[column] ?? 0) / pivot;
      for (let k = column; k < row.length; k++) row[k] = (row[k] ?? 0) - share * (pivotRow[k] ?? 0);
    }
  }
  return { rows, determinant };
}

/** The determinant of a square matrix; of an empty one, 1. */
export function determinant(matrix: Matrix): number {
  return eliminate(matrix).determinant;
}

/** x with `matrix` x = `right`, or undefined when the matrix is singular. */
export function solve(matrix: Matrix, right: readonly number[]): number[] | undefined {
  const size = matrix.length;
  const { rows, determinant: whole } = eliminate(matrix.map((row, index) => [...row, right[index] ?? 0]));
  if (whole === 0) return undefined;
  const x = new Array<number>(size).fill(0);
  for (let row = size - 1; row >= 0; row--) {
    const coefficients = rows[row] ?? [];
    let rest = coefficients[size] ?? 0;
    for (let k = row + 1; k < size; k++) rest -= (coefficients[k] ?? 0) * (x[k] ?? 0);
    x[row] = rest / (coefficients[row] ?? 1);
  }
  return x;
}
