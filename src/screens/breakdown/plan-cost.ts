import { oneStep } from '../../core/answer/one-step.ts';
import { phrase } from '../../core/answer/phrase.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { count, money } from '../../core/answer/quantity.ts';
import { sumOf } from '../../core/answer/sum-of.ts';
import type { Worked } from '../../core/answer/worked.ts';
import type { BreakdownPlan, BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import type { Board } from '../../store/records/board.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { costInDelivery } from '../stock/cost-in-delivery.ts';

export interface PlanCost {
  readonly cost: Worked;
  /** Boards of the plan that have no price. */
  readonly unpriced: number;
}

/**
 * What the wood of a plan cost: of each board, the share of its length that is crosscut from it.
 * Undefined when no board of the plan has a price.
 */
export function planCost(
  asked: BreakdownProblem,
  plan: BreakdownPlan,
  rack: readonly Board[],
  deliveries: readonly Delivery[],
): PlanCost | undefined {
  const priced: number[] = [];
  let unpriced = 0;
  for (const rough of asked.boards) {
    const blanks = plan.blanks.filter(({ board }) => board === rough.id);
    if (blanks.length === 0) continue;
    const board = rack.find(({ id }) => id === rough.id);
    const whole = board && costOf(board, rack, deliveries);
    if (whole === undefined) {
      unpriced++;
      continue;
    }
    const taken = sumOf(blanks, ({ length }) => length + asked.shop.crosscutKerf);
    priced.push(whole * Math.min(1, taken / rough.length));
  }
  if (priced.length === 0) return undefined;
  const by = phrase`of ${count(priced.length)} boards, each cost with freight × the share of its length used`;
  const value = sumOf(priced, (cost) => cost);
  return { cost: oneStep('cost of the wood', by, money(value), ['label', 'common-practice']), unpriced };
}

/** What a board cost: as noted on it, or by its delivery's price with its share of the freight. */
function costOf(board: Board, rack: readonly Board[], deliveries: readonly Delivery[]): number | undefined {
  const delivery = deliveries.find(({ id }) => id === board.deliveryId);
  if (!delivery) return board.cost;
  const found = costInDelivery(
    board.id,
    rack.filter(({ deliveryId }) => deliveryId === delivery.id),
    delivery,
  );
  return isProblem(found) ? board.cost : found.cost.value;
}
