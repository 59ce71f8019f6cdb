import { isProblem, type Outcome, problem } from '../../core/answer/problem.ts';
import { sumOf } from '../../core/answer/sum-of.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { chooseContainers, type Purchase } from '../../core/finishing/choose-containers.ts';
import { type CoatedArea, type FinishAmount, finishAmount, finishLoss } from '../../core/finishing/finish-amount.ts';
import { anySpecies, type PartsArea, partsArea } from '../../core/finishing/part-area.ts';
import type { Piece } from '../../store/records/piece.ts';
import { speciesName } from '../../ui/species-name.ts';
import { woodById } from '../../ui/wood-by-id.ts';
import { finishParts } from './finish-parts.ts';
import type { ReadFinish } from './read-finish-form.ts';

export interface FinishPlan {
  readonly area: Worked<PartsArea>;
  /** What gets a coat: each wood, its insides apart. */
  readonly coated: readonly CoatedArea[];
  /** m2 of them. */
  readonly coatedM2: number;
  readonly amount: Worked<FinishAmount>;
  /** Undefined while no container is typed in, or none holds it. */
  readonly purchase: Worked<Purchase> | undefined;
  /** Undefined while nothing is bought. */
  readonly costPerM2: number | undefined;
}

/** How much the pieces take in all, and what to buy for it. Several pieces at once come out of the same cans. */
export function planFinish(pieces: readonly Piece[], read: ReadFinish): Outcome<FinishPlan> {
  const several = pieces.length > 1;
  const parts = pieces.flatMap((piece) =>
    finishParts(piece).map((part) => (several ? { ...part, name: `${piece.name}, ${part.name}` } : part)),
  );
  const area = partsArea(parts, read.shapes);
  if (isProblem(area)) return area;
  const { finish } = read;
  const coated: CoatedArea[] = [];
  for (const [species, treated] of area.value.bySpecies) {
    const what = species === anySpecies ? 'shapes' : speciesName(species);
    const { openPores, closedPores } = finish.firstCoat;
    const thirst = woodById(species)?.pores === 'open' ? openPores : closedPores;
    const add = (name: string, areaM2: number, coats: number) => {
      if (areaM2 > 0) coated.push({ what: name, areaM2, coats, firstCoat: read.wood === 'bare' ? thirst : 1 });
    };
    add(what, treated.shown, read.coats);
    if (read.insideCoats > 0) add(`${what} inside`, treated.inside, read.insideCoats);
  }
  if (coated.length === 0) return problem('parts', 'All that gets finish is inside. Give the insides a coat.');
  const coatedM2 = sumOf(coated, ({ areaM2 }) => areaM2);
  const { coverage, source } = finish;
  const amount = finishAmount({ areas: coated, coverage, loss: finishLoss[read.method], source });
  if (isProblem(amount)) return amount;
  const toBuy = Math.max(0, amount.value.total.likely - read.onShelf);
  const bought = chooseContainers(toBuy, read.containers);
  const purchase = isProblem(bought) ? undefined : bought;
  return {
    area,
    coated,
    coatedM2,
    amount,
    purchase,
    costPerM2: purchase?.value.cost && purchase.value.cost / coatedM2,
  };
}
