import { isProblem, type Problem, problem } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import type { LineName, ReadingName } from '../../core/square/readings.ts';
import { type Squareness, squareness } from '../../core/square/squareness.ts';
import { type Correction, correctionOf } from './correction-of.ts';
import { entryOfLine, type ReadForm, readSquareForm, type SquareForm } from './square-form.ts';

/** All that follows from a check as it is typed; `problems` also holds what is wrong with an entry beside the others. */
export interface Checked extends ReadForm {
  readonly answer: Worked<Squareness> | undefined;
  /** What to do about it; undefined while nothing can be said. */
  readonly correction: Correction | undefined;
  /** Why there is no answer although all that is typed can be read. */
  readonly trouble: Problem | undefined;
  readonly suspect: ReadingName | undefined;
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
  const answer = isProblem(outcome) ? undefined : outcome;
  const trouble = isProblem(outcome) && !typing ? outcome : undefined;
  const found = answer?.value;
  const suspect = (!typing && found?.suspect) || undefined;
  const at = trouble && entryOfLine(trouble.field as LineName, form);
  if (at) read.problems.set(at, trouble);
  if (suspect) read.problems.set(suspect, problem(suspect, 'Doesn’t fit the others. Measure it again.'));
  return {
    ...read,
    answer,
    correction:
      found && (found.closing.consistent || !typing) ? correctionOf(found, form.situation, springBack) : undefined,
    trouble,
    suspect,
  };
}
