import { consumed, consumedWood } from './consumed.ts';
import { lastPlan } from './plan-breakdown.ts';
import type { BreakdownPlan, BreakdownProblem, Wishes } from './problem-types.ts';

/** What one wish costs: the wood, and the units that are short for its sake. */
export interface WishCost {
  readonly wish: keyof Wishes;
  /** Place in the wish's list; 0 for a wish that is a yes or no. */
  readonly index: number;
  /** Wood that is consumed with the wish and not without it, m2. */
  readonly wood: number;
  /** The same as it was bought, m3. */
  readonly volume: number;
  readonly short: number;
}

/**
 * What each of the maker's wishes costs: the plan with all wishes less the plan without that one.
 *
 * The plan without the wish starts from the plan with it, so a wish is not made dearer by chance. Where units are short
 * for a wish, less wood may be consumed with it: the cost is then the units.
 *
 * @param asked a problem with its wishes that `checkProblem` let pass, mm
 * @param plan the best plan for it
 * @returns one cost per wish, m2, m3 and units; each alone, so that they need not add up
 * @valid problems that `checkProblem` let pass
 * @example wishCosts({ ...oneRail, wishes: { keepOut: ['B1'] } }, lastPlan({ ...oneRail, wishes: { keepOut: ['B1'] } }))
 *   // => [{ wish: 'keepOut', index: 0, wood: -0.08, volume: -0.00216, short: 1 }]
 * @source difference of two plans
 */
export function wishCosts(asked: BreakdownProblem, plan: BreakdownPlan): WishCost[] {
  return eachDropped(asked.wishes ?? {}).map(({ wish, index, without }) => {
    const free = lastPlan({ ...asked, wishes: without }, { startFrom: plan });
    const wood = consumed(asked, plan) - consumed(asked, free);
    const volume = consumedWood(asked, plan) - consumedWood(asked, free);
    return { wish, index, wood, volume, short: plan.short.length - free.short.length };
  });
}

function eachDropped(wishes: Wishes): { wish: keyof Wishes; index: number; without: Wishes }[] {
  return (Object.keys(wishes) as (keyof Wishes)[]).flatMap((wish) => {
    const value = wishes[wish];
    if (Array.isArray(value))
      return value.map((_, index) => ({
        wish,
        index,
        without: { ...wishes, [wish]: value.filter((_, other) => other !== index) },
      }));
    return value ? [{ wish, index: 0, without: { ...wishes, [wish]: false } }] : [];
  });
}
