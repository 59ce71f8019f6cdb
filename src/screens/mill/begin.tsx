import { useAll } from '../../app/live.ts';
import { routeTo } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { manualFirst } from '../../core/milling/cautions.ts';
import { thicknessBudget } from '../../core/milling/thickness-budget.ts';
import { boards } from '../../store/boards.ts';
import { millings } from '../../store/millings.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import type { Json } from '../../store/records/record.ts';
import { Button } from '../../ui/button.tsx';
import { howMany } from '../../ui/how-many.ts';
import { Screen } from '../../ui/screen.tsx';
import { Cautions } from '../../ui/steps/cautions.tsx';
import { questions } from '../questions.ts';
import { AssumedShop } from '../shop/assumed-shop.tsx';
import { BudgetAnswer } from './budget.tsx';
import { ManualLimits } from './manual-limits.tsx';
import { millingInput } from './milling-input.ts';
import { sequenceOf } from './sequence-of.ts';

/** Before the first cut: whether every blank can make it, and the limits that the steps will keep to. */
export function Begin({ piece, plan, onBegun }: { piece: Piece; plan: Plan; onBegun(): void }) {
  const rack = useAll(boards);
  if (!rack) return null;
  const budgets = thicknessBudget(millingInput(plan, piece, rack, shop.value));
  const assumed = rack.filter(
    ({ id, warp }) =>
      (warp?.cup === undefined || warp.bow === undefined) && plan.blanks.some(({ board }) => board === id),
  );
  const begin = async () => {
    const sequence = sequenceOf(plan, piece, rack);
    // Why it can't begin stands where the budgets would.
    if (isProblem(sequence)) return;
    const stored = sequence as unknown as { input: Json; steps: Json[] };
    try {
      await millings.add({ pieceId: piece.id, planId: plan.id, ...stored, ticks: {} });
      onBegun();
    } catch {
      // The shell keeps and shows what the phone did not take.
    }
  };
  return (
    <Screen
      question={questions.mill}
      kicker={`Mill · ${piece.name}`}
      action={
        <Button look="big now" onClick={begin}>
          Start milling
        </Button>
      }
    >
      <BudgetAnswer of={budgets} assumed={assumed} />
      <p>
        {howMany(plan.blanks.length, 'blank')}, with the machines of your <a href={routeTo('shop')}>shop</a> as they are
        now.
      </p>
      <AssumedShop />
      <Cautions of={[manualFirst]} />
      <ManualLimits shop={shop.value} />
    </Screen>
  );
}
