import type { ComponentChildren } from 'preact';
import { oneStep } from '../../core/answer/one-step.ts';
import { phrase } from '../../core/answer/phrase.ts';
import { wood } from '../../core/answer/quantity.ts';
import type { Wishes } from '../../core/breakdown/problem-types.ts';
import type { WishCost } from '../../core/breakdown/wish-cost.ts';
import { Amount } from '../../ui/amount.tsx';
import { howMany } from '../../ui/how-many.ts';
import { ShowWorking } from '../../ui/show-working.tsx';

/** The wishes of the plan in hand, the wood that goes into it in m3, and what each wish costs once that is known. */
export interface Planned {
  readonly wishes: Wishes;
  readonly volume: number;
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
export function WishPrice({ planned: { wishes, volume, costs }, wish, of }: Props) {
  // A yes or no is a list of one.
  const made: readonly unknown[] = [wishes[wish] ?? []].flat();
  const index = made.findIndex((one) => JSON.stringify(one) === JSON.stringify(of));
  if (index < 0) return <p class="soft small">Plan again to see what it costs.</p>;
  if (!costs) return <p class="soft small">Finding out what it costs.</p>;
  const cost = costs.find((one) => one.wish === wish && one.index === index);
  if (!cost) return null;
  if (cost.short > 0) return <p class="trouble">It leaves {howMany(cost.short, 'piece')} short.</p>;
  // Below two cubic centimetres nothing is lost that a saw could save.
  if (cost.volume < 2e-6) return <p class="soft small">It costs no wood.</p>;
  const by = phrase`with it ${wood(volume)} − best plan found without it ${wood(volume - cost.volume)}`;
  return (
    <div class="small">
      It costs <Amount of={wood(cost.volume)} />.
      <ShowWorking
        of={oneStep('wood for this wish', by, wood(cost.volume), ['geometry'], phrase`Each wish by itself.`).working}
      />
    </div>
  );
}
