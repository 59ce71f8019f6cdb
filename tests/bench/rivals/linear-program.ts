import highsLoader, { type Highs } from 'highs';

/** A variable of zero or more: what one of it costs, and what it puts into each row. */
export interface Column {
  readonly cost: number;
  readonly puts: readonly { readonly row: number; readonly much: number }[];
}

/** A row: the sum of what the columns put into it is at least, or at most, its limit. */
export interface Row {
  readonly kind: 'least' | 'most';
  readonly limit: number;
}

export interface Solved {
  readonly amounts: Float64Array;
  /** What one more of each row's limit would cost. */
  readonly duals: Float64Array;
}

let solver: Promise<Highs> | undefined;

/** The cheapest amounts by HiGHS, whole ones if asked; `undefined` where it finds none within the seconds. */
export async function cheapest(
  columns: readonly Column[],
  rows: readonly Row[],
  whole: boolean,
  seconds: number,
): Promise<Solved | undefined> {
  solver ??= highsLoader();
  const terms = rows.map((): string[] => []);
  for (const [at, { puts }] of columns.entries()) for (const { row, much } of puts) terms[row]?.push(`${much} x${at}`);
  const lines = [
    'Minimize',
    columns.map(({ cost }, at) => `${cost} x${at}`).join('\n + '),
    'Subject To',
    ...rows.map(
      ({ kind, limit }, at) =>
        `r${at}: ${(terms[at]?.length ?? 0) > 0 ? terms[at]?.join('\n + ') : '0 x0'} ${kind === 'least' ? '>=' : '<='} ${limit}`,
    ),
    ...(whole ? ['General', columns.map((_, at) => `x${at}`).join('\n')] : []),
    'End',
  ];
  const options = { time_limit: seconds, mip_rel_gap: 1e-3, output_flag: false };
  const found = (await solver).solve(lines.join('\n'), options);
  const amounts = new Float64Array(columns.length);
  const duals = new Float64Array(rows.length);
  for (const [name, column] of Object.entries(found.Columns ?? {}))
    amounts[Number(name.slice(1))] = 'Primal' in column ? (column.Primal ?? Number.NaN) : Number.NaN;
  for (const row of found.Rows ?? []) if ('Dual' in row) duals[Number(row.Name.slice(1))] = row.Dual;
  return amounts.some(Number.isNaN) ? undefined : { amounts, duals };
}
