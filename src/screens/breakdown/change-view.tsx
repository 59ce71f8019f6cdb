import { useEffect, useState } from 'preact/hooks';
import { plainStrips } from '../../core/breakdown/plain-strips.ts';
import { planTotals } from '../../core/breakdown/plan-totals.ts';
import type { BreakdownProblem, Wishes } from '../../core/breakdown/problem-types.ts';
import type { WishCost } from '../../core/breakdown/wish-cost.ts';
import type { Plan } from '../../store/records/plan.ts';
import { Button } from '../../ui/button.tsx';
import { startWishCosts } from '../../workers/breakdown-client.ts';
import { KeptPlans } from './kept-plans.tsx';
import type { Names } from './names.ts';
import { WhatIfCard } from './what-if.tsx';
import { WishList } from './wishes.tsx';

interface Props {
  /** The problem as this plan solved it, and as it would be asked now. */
  asked: BreakdownProblem;
  next: BreakdownProblem;
  plan: Plan;
  kept: readonly Plan[];
  wishes: Wishes;
  names: Names;
  running: boolean;
  onWishes(wishes: Wishes): void;
  onChoose(plan: Plan): void;
  onAgain(effort: number): void;
}

/** How thorough the longer search is. */
const longer = 60;

/** To have it otherwise: wishes, a plan made anew or searched for longer, what if, and the plans kept. */
export function ChangeView({ asked, next, plan, kept, wishes, names, running, onWishes, onChoose, onAgain }: Props) {
  const [costs, setCosts] = useState<readonly WishCost[]>();
  useEffect(() => {
    setCosts(undefined);
    return startWishCosts(asked, plan, setCosts);
  }, [plan.id]);
  const planned = {
    wishes: asked.wishes ?? {},
    volume: planTotals(asked, plan).volume,
    costs,
    plainOf: (part: string) => plainStrips(asked, plan, part),
  };
  return (
    <>
      <WishList asked={next} onChange={onWishes} {...{ wishes, names, planned }} />
      <div class="buttons">
        <Button look="big" disabled={running} onClick={() => onAgain(1)}>
          Plan again
        </Button>
        <Button look="big" disabled={running} onClick={() => onAgain(longer)}>
          Look for less waste
        </Button>
      </div>
      <WhatIfCard key={plan.id} {...{ asked, plan, names }} />
      <KeptPlans chosen={plan} {...{ kept, onChoose }} />
    </>
  );
}
