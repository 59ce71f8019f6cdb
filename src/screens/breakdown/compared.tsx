import { oneStep } from '../../core/answer/one-step.ts';
import { phrase } from '../../core/answer/phrase.ts';
import { wood } from '../../core/answer/quantity.ts';
import type { PlanTotals } from '../../core/breakdown/plan-totals.ts';
import { Amount } from '../../ui/amount.tsx';
import { howMany } from '../../ui/how-many.ts';
import { ShowWorking } from '../../ui/show-working.tsx';

interface Props {
  label: string;
  totals: PlanTotals;
  now: PlanTotals;
}

/** A plan beside the one in hand: wood, boards, strips, and what is short. */
export function Compared({ label, totals, now }: Props) {
  const saved = now.volume - totals.volume;
  const { working } = oneStep(
    'difference in wood',
    phrase`${wood(now.volume)} now, ${wood(totals.volume)} then`,
    wood(Math.abs(saved)),
    ['geometry'],
    phrase`The best plans found.`,
  );
  return (
    <div class="answer">
      <p>
        <b>{label}:</b> {howMany(totals.boards, 'board')}, {howMany(totals.strips, 'strip')}.
      </p>
      {totals.short > 0 && <p>{howMany(totals.short, 'piece')} short.</p>}
      {totals.short === 0 && now.short > 0 && <p>Nothing is short.</p>}
      {/* Less than two cubic centimetres is the same plan. */}
      {Math.abs(saved) < 2e-6 ? (
        <p>As much wood as now.</p>
      ) : (
        <p>
          <Amount of={wood(Math.abs(saved))} /> {saved > 0 ? 'less' : 'more'} wood than now.
        </p>
      )}
      <ShowWorking of={working} />
    </div>
  );
}
