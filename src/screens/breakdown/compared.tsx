import { oneStep } from '../../core/answer/one-step.ts';
import { phrase } from '../../core/answer/phrase.ts';
import { m2 } from '../../core/answer/quantity.ts';
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
  const saved = now.consumed - totals.consumed;
  const { working } = oneStep(
    'difference in wood',
    phrase('{before} now, {after} then', { before: m2(now.consumed), after: m2(totals.consumed) }),
    m2(Math.abs(saved)),
    ['geometry'],
    phrase('The best plans found, by area of the face.'),
  );
  return (
    <div class="answer">
      <p>
        <b>{label}:</b> {howMany(totals.boards, 'board')}, {howMany(totals.strips, 'strip')}.
      </p>
      {totals.short > 0 && <p>{howMany(totals.short, 'piece')} short.</p>}
      {totals.short === 0 && now.short > 0 && <p>Nothing is short.</p>}
      {/* Less than a square centimetre is the same plan. */}
      {Math.abs(saved) < 1e-4 ? (
        <p>As much wood as now.</p>
      ) : (
        <p>
          <Amount of={m2(Math.abs(saved))} /> {saved > 0 ? 'less' : 'more'} wood than now.
        </p>
      )}
      <ShowWorking of={working} />
    </div>
  );
}
