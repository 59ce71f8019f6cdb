import { useState } from 'preact/hooks';
import { offerUndo } from '../../app/notices.ts';
import { isProblem, type Problem } from '../../core/answer/problem.ts';
import { boards } from '../../store/boards.ts';
import type { Milling } from '../../store/records/milling.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import { Button } from '../../ui/button.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { backToPlan, onNewPlan } from './on-new-plan.ts';
import { sequenceOf } from './sequence-of.ts';
import { changeRun } from './store-progress.ts';

/** There is a newer plan than the one that the run follows: the run goes on by it, and what is done stays done. */
export function NewPlan({ run, piece, plan, onBegun }: { run: Milling; piece: Piece; plan: Plan; onBegun(): void }) {
  const [trouble, setTrouble] = useState<Problem>();
  const goOn = async () => {
    try {
      const sequence = sequenceOf(plan, piece, await boards.all());
      if (isProblem(sequence)) return setTrouble(sequence);
      const { input, steps } = sequence;
      let [before, went] = [run, run];
      await changeRun(run.id, (now) => {
        before = now;
        went = onNewPlan(now, plan.id, input, steps, Date.now());
        return went;
      });
      onBegun();
      offerUndo('The steps follow the new plan.', () =>
        changeRun(run.id, (now) => backToPlan(now, before, went, Date.now())),
      );
    } catch {
      // The shell keeps and shows what the phone did not take.
    }
  };
  return (
    <section class="answer now">
      <p>There is a newer plan. What is done the same stays done.</p>
      <Trouble of={trouble} />
      <Button onClick={goOn}>Go on by the new plan</Button>
    </section>
  );
}
