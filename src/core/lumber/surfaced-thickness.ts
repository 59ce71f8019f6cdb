import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { count, mm } from '../answer/quantity.ts';
import type { SourceId } from '../answer/source-id.ts';
import type { Worked } from '../answer/worked.ts';

/** One row of the table of standard thicknesses. */
export interface SurfacedRow {
  /** Rough thickness in quarters of an inch. */
  readonly quarters: number;
  /** Thickness surfaced two sides. */
  readonly mm: number;
  readonly source: SourceId;
}

/**
 * What a rough board surfaces to on two sides by the standard table.
 *
 * @param quarters rough thickness in quarters
 * @param rows the table (`tables/surfaced-thickness.ts`)
 * @returns mm
 * @valid flat boards; what cup, bow and twist leave is another question
 * @errors no row for these quarters
 * @example surfacedThickness(4, surfacedThicknesses) // => { value: 20.6 }
 * @source the row's
 */
export function surfacedThickness(quarters: number, rows: readonly SurfacedRow[]): Outcome<Worked> {
  const row = rows.find((candidate) => candidate.quarters === quarters);
  if (!row) {
    const known = rows.map((candidate) => `${candidate.quarters}/4`).join(', ');
    return problem('quarters', `The table has only ${known}.`);
  }
  return oneStep(
    'surfaced two sides',
    phrase`standard table, row ${count(quarters)}/4`,
    mm(row.mm),
    [row.source],
    phrase`Flat boards; warp takes more.`,
  );
}
