import type { ComponentChildren } from 'preact';
import { oneStep } from '../../core/answer/one-step.ts';
import { phrase } from '../../core/answer/phrase.ts';
import { m2 } from '../../core/answer/quantity.ts';
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

/** What a wish costs: its kind, and what is wished. */
export type Price = (wish: keyof Wishes, of: unknown) => ComponentChildren;

interface Props {
  planned: Planned;
  wish: keyof Wishes;
  of: unknown;
}

/** What one wish costs in wood. */
export function WishPrice({ planned: { wishes, consumed, costs }, wish, of }: Props) {
  // A yes or no is a list of one.
  const made: readonly unknown[] = [wishes[wish] ?? []].flat();
  const index = made.findIndex((one) => JSON.stringify(one) === JSON.stringify(of));
  if (index < 0) return <p class="soft small">Plan again to see what it costs.</p>;
  if (!costs) return <p class="soft small">Finding out what it costs.</p>;
  const cost = costs.find((one) => one.wish === wish && one.index === index);
  if (!cost) return null;
  if (cost.short > 0) return <p class="trouble">It leaves {howMany(cost.short, 'piece')} short.</p>;
  // Below a square centimetre nothing is lost that a saw could save.
  if (cost.wood < 1e-4) return <p class="soft small">It costs no wood.</p>;
  const by = phrase('with it {with} − best plan found without it {without}', {
    with: m2(consumed),
    without: m2(consumed - cost.wood),
  });
  return (
    <div class="small">
      It costs <Amount of={m2(cost.wood)} />.
      <ShowWorking
        of={oneStep('wood for this wish', by, m2(cost.wood), ['geometry'], phrase('Each wish by itself.')).working}
      />
    </div>
  );
}
