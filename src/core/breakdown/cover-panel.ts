import type { CheapestCover } from './cheapest-cover.ts';
import type { Draft } from './draft.ts';
import type { Mood } from './mood.ts';
import { panelSupplies, type Supply } from './panel-supplies.ts';
import { type Rack, servingBoards, type Unit } from './rack.ts';

/**
 * Covers one panel with the cheapest strips to be had now, and says whether it is covered. `partly` takes what there is
 * when it isn't enough; otherwise the draft stays as it was.
 */
export function coverPanel(draft: Draft, unitAt: number, mood: Mood, cover: CheapestCover, partly = false): boolean {
  const unit = draft.rack.units[unitAt] as Unit;
  const need = draft.missing[unitAt] as number;
  let best = cheapestChoice(draft, unit, need, mood, cover, false);
  if (!best || best.sum < need) best = cheapestChoice(draft, unit, need, mood, cover, true);
  const sum = best?.sum ?? 0;
  draft.distance[unitAt] = Math.max(0, (need - sum) / need);
  if (!best || best.supplies.length === 0 || (sum < need && !partly)) return false;
  take(draft, unitAt, best.supplies, sum - need);
  draft.missing[unitAt] = Math.max(0, need - sum);
  return sum >= need;
}

interface Choice {
  readonly supplies: Supply[];
  readonly sum: number;
  readonly cost: number;
}

/** The cheapest supplies that reach the need, or those that reach furthest. */
function cheapestChoice(
  draft: Draft,
  unit: Unit,
  need: number,
  mood: Mood,
  cover: CheapestCover,
  wholeRack: boolean,
): Choice | undefined {
  const { rack } = draft;
  const worth = (beyond: number) =>
    mood.credit === 0 ? 0 : mood.credit * mood.waiting.worth(unit.part.species, beyond, unit.blankLength);
  let best: Choice | undefined;
  const all = wholeRack || rack.together[unit.partAt] !== Number.POSITIVE_INFINITY;
  for (const supplies of candidateSets(rack, unit, panelSupplies(draft, unit, mood, all), mood)) {
    const { chosen, sum } = cover.choose(
      supplies.map(({ rips, cost }) => ({ gives: rips.gives, cost })),
      need,
      worth,
      mood.credit * (unit.blankLength + rack.shop.crosscutKerf),
    );
    const taken = chosen.map((at) => supplies[at] as Supply);
    const cost = taken.reduce((total, supply) => total + supply.cost, -worth(sum - need));
    const better = !best || (sum >= need ? best.sum < need || cost < best.cost : sum > best.sum);
    if (better) best = { supplies: taken, sum, cost };
  }
  return best;
}

/** Neighbourhoods tried for one panel that is to stay together; of a larger rack others each time. */
const enoughWindows = 200;

/** All supplies at once, or, for a panel that is to stay together, those of so many neighbouring boards at a time. */
function candidateSets(rack: Rack, unit: Unit, supplies: Supply[], mood: Mood): Supply[][] {
  const together = rack.together[unit.partAt] as number;
  if (together === Number.POSITIVE_INFINITY) return [supplies];
  const boards = servingBoards(rack, unit.partAt);
  const windows = Math.max(1, boards.length - together + 1);
  const first = Math.floor(mood.random() * windows);
  return Array.from({ length: Math.min(windows, enoughWindows) }, (_, turn) => {
    const from = (first + turn) % windows;
    const window = new Set(boards.slice(from, from + together));
    return supplies.filter((supply) => window.has(supply.boardAt));
  });
}

/** Cuts the chosen supplies; what is beyond the need stays together in one blank, where another part can use it. */
function take(draft: Draft, unitAt: number, supplies: readonly Supply[], beyond: number): void {
  const { shop } = draft.rack;
  let trimmed: { supply: Supply; strips: number; width: number; saved: number } | undefined;
  if (beyond > 0)
    for (const supply of supplies) {
      const { strips, width, gives } = supply.rips;
      const still = gives - beyond;
      const fewer = Math.max(1, Math.ceil(still / (width - shop.edgeAllowance) - 1e-9));
      const narrow = Math.max(shop.minStrip, still / fewer + shop.edgeAllowance);
      if (narrow > width) continue;
      const saved = strips * (width + shop.ripKerf) - fewer * (narrow + shop.ripKerf);
      if (saved >= shop.minStrip && saved > (trimmed?.saved ?? 0))
        trimmed = { supply, strips: fewer, width: narrow, saved };
    }
  for (const supply of supplies) {
    const { strips, width } = supply === trimmed?.supply ? trimmed : supply.rips;
    draft.cut(supply, unitAt, width, strips);
  }
}
