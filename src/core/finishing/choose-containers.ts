import { firstBad, type NumberCheck } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome, Problem } from '../answer/problem.ts';
import { count, litres, money } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';

/** A size in which the finish is sold. */
export interface Container {
  readonly litres: number;
  readonly price: number;
}

export interface Bought extends Container {
  readonly count: number;
}

export interface Purchase {
  /** The sizes to buy, largest first; empty when nothing is needed. */
  readonly buy: readonly Bought[];
  readonly cost: number;
  readonly litres: number;
  /** Litres more than needed. */
  readonly left: number;
}

/** Sizes are compared to a tenth of a millilitre, prices to a thousandth. */
const perLitre = 10000;
const perMoney = 1000;

/** More than this is no shop's order, litres; it also bounds the table below. */
const mostLitres = 400;

const badChoice = (needLitres: number, containers: readonly Container[]): Problem | undefined =>
  firstBad([
    ['litres', 'The amount', needLitres, 'litres', { least: 0, most: mostLitres }],
    ['containers', 'The number of sizes', containers.length, 'count', { least: 1, most: 30 }],
    ...containers.flatMap(({ litres: size, price }, index): NumberCheck[] => [
      [`containers.${index}.litres`, 'The size', size, 'litres', { least: 1 / perLitre, most: mostLitres }],
      [`containers.${index}.price`, 'The price', price, 'money', { above: 0, most: 1e6 }],
    ]),
  ]);

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));

/**
 * For each amount up to `need` the container that a cheapest cover of it may take first: then least volume, then
 * fewest. A cover without one of its containers covers what that one leaves, and is itself a best cover: so each amount
 * is found from smaller ones.
 */
function firstTaken(need: number, sizes: readonly number[], prices: readonly number[]): Uint8Array {
  const cost = new Float64Array(need + 1);
  const volume = new Float64Array(need + 1);
  const cans = new Uint32Array(need + 1);
  const taken = new Uint8Array(need + 1);
  for (let amount = 1; amount <= need; amount++) {
    let best = Number.POSITIVE_INFINITY;
    let bestVolume = 0;
    let bestCans = 0;
    for (let which = 0; which < sizes.length; which++) {
      const size = sizes[which] ?? 0;
      const rest = Math.max(0, amount - size);
      const c = (cost[rest] ?? 0) + (prices[which] ?? 0);
      if (c > best) continue;
      const v = (volume[rest] ?? 0) + size;
      const n = (cans[rest] ?? 0) + 1;
      if (c === best && (v > bestVolume || (v === bestVolume && n >= bestCans))) continue;
      best = c;
      bestVolume = v;
      bestCans = n;
      taken[amount] = which;
    }
    cost[amount] = best;
    volume[amount] = bestVolume;
    cans[amount] = bestCans;
  }
  return taken;
}

/**
 * The cheapest set of containers that holds enough. Of equally cheap ones the one with least volume, then with fewest
 * cans.
 *
 * @param needLitres litres to hold, what is on the shelf already taken off
 * @param containers sizes in litres with prices in the maker's money; any number of each can be bought
 * @returns how many of each, the cost, the litres bought and left over
 * @valid up to 400 litres and 30 sizes; exact, with sizes to 0.1 ml (rounded down) and the need to 0.1 ml (rounded up)
 * @errors no sizes, a size or price that is missing, zero or absurd
 * @example chooseContainers(0.587, [{ litres: 0.35, price: 24 }, { litres: 1, price: 52 }]).value
 *   // => { buy: [{ litres: 0.35, count: 2 }], cost: 48 }
 * @source unbounded covering knapsack by dynamic programming
 */
export function chooseContainers(needLitres: number, containers: readonly Container[]): Outcome<Worked<Purchase>> {
  const bad = badChoice(needLitres, containers);
  if (bad) return bad;
  const tenths = containers.map((one) => Math.floor(one.litres * perLitre + 1e-6));
  const unit = tenths.reduce(divisor);
  // Shop sizes share a large divisor, which keeps the table small.
  const need = Math.ceil((needLitres * perLitre - 1e-6) / unit);
  const sizes = tenths.map((size) => size / unit);
  const prices = containers.map(({ price }) => Math.round(price * perMoney));

  const taken = firstTaken(need, sizes, prices);
  const counts = containers.map(() => 0);
  for (let amount = need; amount > 0; ) {
    const which = taken[amount] ?? 0;
    counts[which] = (counts[which] ?? 0) + 1;
    amount -= sizes[which] ?? amount;
  }
  const buy = containers
    .map(({ litres: size, price }, index) => ({ litres: size, price, count: counts[index] ?? 0 }))
    .filter((one) => one.count > 0)
    .sort((a, b) => b.litres - a.litres);
  const cost = counts.reduce((sum, number, index) => sum + number * (prices[index] ?? 0), 0) / perMoney;
  const bought = buy.reduce((sum, one) => sum + one.count * one.litres, 0);
  const left = Math.max(0, bought - needLitres);
  return {
    value: { buy, cost, litres: bought, left },
    working: {
      steps: [
        ...buy.map((one) =>
          workingStep(
            'containers',
            phrase`${count(one.count)} of ${litres(one.litres)} at ${money(one.price)}.`,
            money(one.count * one.price),
          ),
        ),
        workingStep(
          'cost',
          phrase`The cheapest that hold ${litres(needLitres)}: ${litres(bought)}, ${litres(left)} over.`,
          money(cost),
        ),
      ],
      sources: ['label'],
    },
  };
}
