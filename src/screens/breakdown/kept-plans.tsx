import { percent, wood } from '../../core/answer/quantity.ts';
import { planTotals } from '../../core/breakdown/plan-totals.ts';
import type { Plan } from '../../store/records/plan.ts';
import { Amount } from '../../ui/amount.tsx';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { clockTime } from '../../ui/clock-time.ts';
import { howMany } from '../../ui/how-many.ts';
import { solvedProblem } from './solved-problem.ts';
import { removePlan } from './store-plan.ts';

interface Props {
  kept: readonly Plan[];
  chosen: Plan;
  onChoose(plan: Plan): void;
}

/** Every plan made for the piece, newest first, side by side; any of them can be taken up again. */
export function KeptPlans({ kept, chosen, onChoose }: Props) {
  const newest = [...kept].sort((a, b) => b.created - a.created);
  return (
    <Card title="Plans kept">
      <ul class="rows">
        {newest.map((plan) => {
          const totals = planTotals(solvedProblem(plan), plan);
          const when = clockTime(plan.created, Date.now());
          return (
            <li>
              <div>
                <p>
                  <b>{when}</b>
                  {plan.id === chosen.id && ', in hand'}
                </p>
                <p class="soft small">
                  {howMany(totals.boards, 'board')}, {howMany(totals.strips, 'strip')},{' '}
                  <Amount of={wood(totals.volume)} />, yield <Amount of={percent(totals.yield.value)} />
                  {totals.short > 0 && `, ${totals.short} short`}
                  {(plan.cutDone?.length ?? 0) > 0 && `, ${plan.cutDone?.length} cut`}
                </p>
              </div>
              {plan.id !== chosen.id && (
                <>
                  <Button label={`Take the plan of ${when}`} onClick={() => onChoose(plan)}>
                    Take it
                  </Button>
                  <Button label={`Delete the plan of ${when}`} onClick={() => removePlan(plan)}>
                    Delete
                  </Button>
                </>
              )}
            </li>
          );
        })}
      </ul>
    </Card>
  );
}
