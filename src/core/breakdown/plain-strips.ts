import type { BreakdownPlan, BreakdownProblem } from './problem-types.ts';

/**
 * How many strips of a part that is wished to show come from boards without a good face: those with one don't reach.
 *
 * @param asked a problem with its wishes
 * @param plan blanks with their strips
 * @param part id of the part
 * @returns a count; 0 for a part that isn't wished to show
 * @valid any plan of the problem
 * @example plainStrips(
 *   {
 *     ...smallProblem,
 *     boards: smallProblem.boards.map((one) => ({ ...one, goodFace: one.id === 'B1' })),
 *     wishes: { show: ['lid'] },
 *   },
 *   planOf(blank('B1', 0, 1030, [150, 'lid']), blank('B2', 0, 1030, [150, 'lid'])),
 *   'lid',
 * ) // => 1
 * @source count
 */
export function plainStrips({ boards, wishes }: BreakdownProblem, plan: BreakdownPlan, part: string): number {
  if (!wishes?.show?.includes(part)) return 0;
  const good = new Set(boards.flatMap(({ id, goodFace }) => (goodFace ? id : [])));
  const plain = plan.blanks.filter(({ board }) => !good.has(board));
  return plain.flatMap(({ strips }) => strips.filter((strip) => strip.part === part)).length;
}
