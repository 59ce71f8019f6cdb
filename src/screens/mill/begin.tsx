import { useState } from 'preact/hooks';
import { useAll } from '../../app/live.ts';
import { routeTo } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import { isProblem, type Problem } from '../../core/answer/problem.ts';
import { millingSequence } from '../../core/milling/milling-sequence.ts';
import { thicknessBudget } from '../../core/milling/thickness-budget.ts';
import { boards } from '../../store/boards.ts';
import { millings } from '../../store/millings.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import type { Json } from '../../store/records/record.ts';
import { Say } from '../../ui/say.tsx';
import { Screen } from '../../ui/screen.tsx';
import { questions } from '../questions.ts';
import { AssumedShop } from '../shop/assumed-shop.tsx';
import { BudgetAnswer } from './budget.tsx';
import { ManualLimits } from './manual-limits.tsx';
import { millingInput } from './milling-input.ts';

/** Before the first cut: whether every blank can make it, and the limits that the steps will keep to. */
export function Begin({ piece, plan, onBegun }: { piece: Piece; plan: Plan; onBegun(): void }) {
  const rack = useAll(boards);
  const [trouble, setTrouble] = useState<Problem>();
  if (!rack) return null;
  const input = millingInput(plan, piece, rack, shop.value);
  const budgets = isProblem(input) ? input : thicknessBudget(input);
  const begin = async () => {
    const steps = isProblem(input) ? input : millingSequence(input);
    if (isProblem(steps)) {
      setTrouble(steps);
      return;
    }
    try {
      await millings.add({
        pieceId: piece.id,
        planId: plan.id,
        input: input as unknown as Json,
        steps: steps as unknown as Json[],
        ticks: {},
      });
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
        <button type="button" class="button big now" onClick={() => void begin()}>
          Start milling
        </button>
      }
    >
      {trouble && (
        <p class="answer now" role="alert">
          <span>
            <Say phrase={trouble.message} />
          </span>
        </p>
      )}
      <BudgetAnswer of={budgets} />
      <p>
        {plan.blanks.length} {plan.blanks.length === 1 ? 'blank' : 'blanks'} to mill with the machines of your{' '}
        <a href={routeTo('shop')}>shop</a>. The steps are made when you start, and stay as they are.
      </p>
      <AssumedShop />
      <p class="caution">
        <span>
          <b>Caution.</b> The machine’s own manual, local rules and trained advice come before anything said here.
        </span>
      </p>
      <ManualLimits shop={shop.value} />
    </Screen>
  );
}
