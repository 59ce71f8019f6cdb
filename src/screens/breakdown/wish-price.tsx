import { phrase } from '../../core/answer/phrase.ts';
import { m2 } from '../../core/answer/quantity.ts';
import type { Working } from '../../core/answer/worked.ts';
import type { Wishes } from '../../core/breakdown/problem-types.ts';
import type { WishCost } from '../../core/breakdown/wish-cost.ts';
import { Amount } from '../../ui/amount.tsx';
import { howMany } from '../../ui/how-many.ts';
import { ShowWorking } from '../../ui/show-working.tsx';

/** The wishes of the plan in hand, the wood that it consumes, and what each wish costs once that is known. */
export interface Planned {
  readonly wishes: Wishes;
  readonly consumed: number;
  readonly costs: readonly WishCost[] | undefined;
}

interface Props {
  planned: Planned | undefined;
  wish: keyof Wishes;
  /** Place of the wish in the plan's own list; negative when the plan was made without it. */
  index: number;
}

/** What one wish costs in wood. */
export function WishPrice({ planned, wish, index }: Props) {
  if (!planned) return null;
  if (index < 0) return <p class="soft small">Plan again to see what it costs.</p>;
  if (!planned.costs) return <p class="soft small">Finding out what it costs.</p>;
  const cost = planned.costs.find((one) => one.wish === wish && one.index === index);
  if (!cost) return null;
  if (cost.short > 0) return <p class="trouble">It leaves {howMany(cost.short, 'piece')} short.</p>;
  // Below a square centimetre nothing is lost that a saw could save.
  if (cost.wood < 1e-4) return <p class="soft small">It costs no wood.</p>;
  return (
    <div class="small">
      It costs <Amount of={m2(cost.wood)} />.
      <ShowWorking of={priceWorking(cost.wood, planned.consumed)} />
    </div>
  );
}

const priceWorking = (wood: number, consumed: number): Working => ({
  steps: [
    {
      finds: 'wood for this wish',
      by: phrase('with it {with} − best plan found without it {without}', {
        with: m2(consumed),
        without: m2(consumed - wood),
      }),
      gives: m2(wood),
    },
  ],
  holds: phrase('Each wish by itself.'),
  sources: ['geometry'],
});
