import { isProblem, type Outcome, problem } from '../../core/answer/problem.ts';
import { foldedCaseGrains } from '../../core/movement/folded-case-grains.ts';
import type { Joint, Meeting, Part } from '../../store/records/piece.ts';

/** The four mitred corners of a case, from the ids of its sides in order around it. */
export function caseCorners(parts: readonly Part[], ids: readonly string[]): Outcome<readonly Omit<Joint, 'id'>[]> {
  const [first, second, third, fourth] = ids.map((id) => parts.find((part) => part.id === id));
  if (!first || !second || !third || !fourth) return problem('sides', 'Choose all four sides.');
  const grains = foldedCaseGrains([first, second, third, fourth]);
  if (isProblem(grains)) return grains;
  const meeting = (at: number): Meeting => ({ surface: 'mitre', grain: grains[at] ?? 'across' });
  return ids.map((id, at) => {
    const next = (at + 1) % 4;
    return {
      kind: 'mitre',
      parts: [id, ids[next] ?? ''],
      meets: [meeting(at), meeting(next)],
      note: `${at + 1} of 4`,
    };
  });
}
