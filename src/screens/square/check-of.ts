import { isProblem, type Problem } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { type Squareness, squareness } from '../../core/square/squareness.ts';
import { type Correction, correctionOf } from './correction-of.ts';
import { type Entry, entriesOf, type ReadForm, readSquareForm, type SquareForm } from './square-form.ts';

/** All that follows from a check as it is typed. */
export interface Checked extends ReadForm {
  readonly answer: Worked<Squareness> | undefined;
  /** What to do about it; undefined while nothing can be said. */
  readonly correction: Correction | undefined;
  /** What is wrong with one entry beside the others, and where it stands. */
  readonly trouble: { readonly at: Entry | undefined; readonly problem: Problem } | undefined;
  readonly suspect: Entry | undefined;
}

/**
 * Reads a check and says what to do. A length that is still being typed contradicts the others until its last key:
 * while `typing` that is not said yet.
 */
export function checkOf(
  form: SquareForm,
  unit: 'in' | 'mm',
  precision: number,
  springBack: number,
  typing: boolean,
): Checked {
  const read = readSquareForm(form, unit);
  const outcome = read.measured && squareness(read.measured, precision);
  const problem = isProblem(outcome) ? outcome : undefined;
  const answer = isProblem(outcome) ? undefined : outcome;
  const found = answer?.value;
  return {
    ...read,
    answer,
    correction:
      found && (found.closing.consistent || !typing) ? correctionOf(found, form.situation, springBack) : undefined,
    trouble:
      problem && !typing ? { at: entriesOf(form).find((entry) => problem.field.endsWith(entry)), problem } : undefined,
    suspect: typing ? undefined : (found?.suspect ?? undefined),
  };
}
