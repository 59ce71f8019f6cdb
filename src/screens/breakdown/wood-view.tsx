import { useAll } from '../../app/live.ts';
import { routeTo } from '../../app/routes.ts';
import { m2, money, percent } from '../../core/answer/quantity.ts';
import { sumOf } from '../../core/answer/sum-of.ts';
import { planTotals, type WoodUse } from '../../core/breakdown/plan-totals.ts';
import type { BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import { deliveries } from '../../store/deliveries.ts';
import type { Board } from '../../store/records/board.ts';
import type { Plan } from '../../store/records/plan.ts';
import { Amount } from '../../ui/amount.tsx';
import { Card } from '../../ui/card.tsx';
import { Facts } from '../../ui/facts.tsx';
import { howMany } from '../../ui/how-many.ts';
import { ShowWorking } from '../../ui/show-working.tsx';
import { planCost } from './plan-cost.ts';

const causes: readonly (readonly [keyof WoodUse, string])[] = [
  ['parts', 'In the parts'],
  ['kerf', 'Sawdust'],
  ['edges', 'Jointed off edges'],
  ['ends', 'Snipe and last trims'],
  ['offcuts', 'Beside the strips'],
  ['defects', 'Around knots, splits, taper and crook'],
  ['leftovers', 'Left in length, back to the rack'],
];

interface Props {
  asked: BreakdownProblem;
  plan: Plan;
  rack: readonly Board[];
}

/** Where the wood of a plan goes, and what it cost. */
export function WoodView({ asked, plan, rack }: Props) {
  const totals = planTotals(asked, plan);
  const started = sumOf(Object.values(totals.wood), (area) => area);
  return (
    <>
      <div class="answer">
        <p class="figure">
          <Amount of={percent(totals.yield.value)} />
        </p>
        <p>of the wood cut ends up in the parts.</p>
        <ShowWorking of={totals.yield.working} />
      </div>
      <Card title="Where the wood goes">
        <p class="soft">
          {howMany(totals.boards, 'board')} started, <Amount of={m2(started)} /> of face;{' '}
          {howMany(totals.strips, 'strip')}.
        </p>
        <Facts
          rows={causes.map(([cause, label]) => {
            const area = Math.max(0, totals.wood[cause]);
            return [[label, ' ', <Share percent={(100 * area) / started} />], m2(area)];
          })}
        />
        <p class="soft small">By area of the face; percent of the boards started.</p>
      </Card>
      <Cost {...{ asked, plan, rack }} />
    </>
  );
}

const Share = ({ percent: of }: { percent: number }) => (
  <span class="soft small">
    <Amount of={percent(of)} />
  </span>
);

function Cost({ asked, plan, rack }: Props) {
  const bought = useAll(deliveries);
  if (!bought) return null;
  const found = planCost(asked, plan, rack, bought);
  if (!found) {
    return (
      <p class="soft">
        No price is known. Note it with the board or its delivery in the <a href={routeTo('stock')}>stock</a>.
      </p>
    );
  }
  return (
    <section class="answer" aria-label="Cost">
      <p class="figure">
        <Amount of={money(found.cost.value)} />
      </p>
      <p>is what this wood cost.</p>
      {found.unpriced > 0 && <p class="soft">Without a price, not counted: {found.unpriced}.</p>}
      <ShowWorking of={found.cost.working} />
    </section>
  );
}
