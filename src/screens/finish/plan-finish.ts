import { isProblem, type Outcome, problem } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { type AmountOf, addAmounts } from '../../core/finishing/add-amounts.ts';
import { chooseContainers, type Purchase } from '../../core/finishing/choose-containers.ts';
import { type FinishAmount, finishAmount, finishLoss } from '../../core/finishing/finish-amount.ts';
import { costPerM2 } from '../../core/finishing/finish-cost.ts';
import { anySpecies, type PartsArea, partsArea } from '../../core/finishing/part-area.ts';
import type { Piece } from '../../store/records/piece.ts';
import { speciesName } from '../../ui/species-name.ts';
import { woodById } from '../../ui/wood-by-id.ts';
import { finishParts } from './finish-parts.ts';
import type { ReadFinish } from './read-finish-form.ts';

export interface FinishPlan {
  readonly area: Worked<PartsArea>;
  /** m2 that get a coat. */
  readonly coatedM2: number;
  readonly amount: Worked<FinishAmount>;
  /** Undefined while no container is typed in, or none holds it. */
  readonly purchase: Worked<Purchase> | undefined;
  readonly costPerM2: Worked | undefined;
}

/** How much the pieces take in all, and what to buy for it. Several pieces at once come out of the same cans. */
export function planFinish(pieces: readonly Piece[], read: ReadFinish): Outcome<FinishPlan> {
  const several = pieces.length > 1;
  const parts = pieces.flatMap((piece) =>
    finishParts(piece).map((part) => (several ? { ...part, name: `${piece.name}, ${part.name}` } : part)),
  );
  const area = partsArea(parts, read.shapes);
  if (isProblem(area)) return area;
  const amounts: AmountOf[] = [];
  let coatedM2 = 0;
  for (const [species, treated] of area.value.bySpecies) {
    const what = species === anySpecies ? 'shapes' : speciesName(species);
    for (const [treatment, coats] of [
      ['shown', read.coats],
      ['inside', read.insideCoats],
    ] as const) {
      if (treated[treatment] === 0 || (treatment === 'inside' && coats === 0)) continue;
      const amount = amountOf(treated[treatment], coats, species, read);
      if (isProblem(amount)) return amount;
      coatedM2 += treated[treatment];
      amounts.push({ what: treatment === 'inside' ? `${what} inside` : what, amount });
    }
  }
  if (coatedM2 === 0) return problem('parts', 'All that gets finish is inside. Give the insides a coat.');
  const amount = addAmounts(amounts);
  const toBuy = Math.max(0, amount.value.total.likely - read.onShelf);
  const purchase = known(chooseContainers(toBuy, read.containers));
  return {
    area,
    coatedM2,
    amount,
    purchase,
    costPerM2: purchase?.value.cost ? known(costPerM2(purchase.value.cost, coatedM2)) : undefined,
  };
}

const known = <T>(found: Outcome<T>): T | undefined => (isProblem(found) ? undefined : found);

function amountOf(
  areaM2: number,
  coats: number,
  species: string,
  { finish, method, wood }: ReadFinish,
): Outcome<Worked<FinishAmount>> {
  const open = woodById(species)?.pores === 'open';
  const thirst = open ? finish.firstCoat.openPores : finish.firstCoat.closedPores;
  return finishAmount({
    areaM2,
    coverage: finish.coverage,
    coats,
    loss: finishLoss[method],
    firstCoat: wood === 'bare' ? thirst : 1,
    source: finish.source,
  });
}
