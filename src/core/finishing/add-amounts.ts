import { phrase } from '../answer/phrase.ts';
import { litres } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { type FinishAmount, inAll } from './finish-amount.ts';

/** What one wood, outside or inside, takes. */
export interface AmountOf {
  readonly what: string;
  readonly amount: Worked<FinishAmount>;
}

/**
 * What several woods take together, coat by coat: those with fewer coats drop out of the later ones.
 *
 * @param amounts litres of each, with its name
 * @returns litres per coat and in all, with the working of each
 * @valid one finish out of one can
 * @example addAmounts(
 *   [
 *     [3, 2],
 *     [1, 1],
 *   ].map(([areaM2, coats]) => ({
 *     what: 'wood',
 *     amount: finishAmount({ areaM2, coverage: range(10), coats, source: 'label' }),
 *   })),
 * ).value // => { coats: [{ likely: 0.4 }, { likely: 0.3 }], total: { likely: 0.7 } }
 * @source arithmetic
 */
export function addAmounts(amounts: readonly AmountOf[]): Worked<FinishAmount> {
  const most = Math.max(0, ...amounts.map(({ amount }) => amount.value.coats.length));
  const coats = Array.from({ length: most }, (_, index) =>
    inAll(amounts.flatMap(({ amount }) => amount.value.coats[index] ?? [])),
  );
  const total = inAll(coats);
  return {
    value: { coats, total },
    working: {
      steps: [
        ...amounts.flatMap(({ what, amount }) =>
          amount.working.steps.map((step) => ({ ...step, finds: `${what}, ${step.finds}` })),
        ),
        {
          finds: 'in all',
          by: phrase`${litres(total.least)} to ${litres(total.most)}.`,
          gives: litres(total.likely),
        },
      ],
      sources: [...new Set(amounts.flatMap(({ amount }) => amount.working.sources))],
    },
  };
}
