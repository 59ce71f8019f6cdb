import { isProblem, type Outcome, problem } from '../../core/answer/problem.ts';
import { foldedCaseCorners } from '../../core/movement/folded-case-corners.ts';
import type { Joint, Part } from '../../store/records/piece.ts';

interface Sides {
  readonly first: string;
  readonly second: string;
  readonly third: string;
  readonly fourth: string;
}

/** The four mitred corners of a case, from the ids of its sides in order around it. */
export function caseCorners(parts: readonly Part[], sides: Sides): Outcome<readonly Omit<Joint, 'id'>[]> {
  const ids = [sides.first, sides.second, sides.third, sides.fourth];
  const [first, second, third, fourth] = ids.map((id) => parts.find((part) => part.id === id));
  if (!first || !second || !third || !fourth) return problem('sides', 'Choose all four sides.');
  const found = foldedCaseCorners([first, second, third, fourth]);
  if (isProblem(found)) return found;
  return found.map(({ sides: [one, next], grain }, at) => ({
    kind: 'mitre',
    parts: [ids[one] ?? '', ids[next] ?? ''],
    meets: [
      { surface: 'mitre', grain: grain[0] },
      { surface: 'mitre', grain: grain[1] },
    ],
    note: `${at + 1} of 4`,
  }));
}
