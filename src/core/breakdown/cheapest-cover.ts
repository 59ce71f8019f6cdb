/** What can be chosen once each: the width it gives, and its cost. */
export interface Giving {
  readonly gives: number;
  readonly cost: number;
}

/** Steps into which the width to cover is divided; sums themselves stay exact. */
const steps = 200;
const noNode = -1;

/**
 * The cheapest choice of givers whose widths add up to at least a need: dynamic programming over the width.
 *
 * Each step of width keeps the cheapest choice that reaches it, with its exact sum; so the answer is exact but for
 * choices that fall into one step, where the dearer is dropped.
 *
 * @returns by `choose` the chosen givers (places in the list) and their sum, or the choice that reaches furthest when
 *   none suffices
 * @valid any positive widths
 * @example new CheapestCover().choose(
 *   [
 *     { gives: 100, cost: 1 },
 *     { gives: 60, cost: 0.5 },
 *     { gives: 50, cost: 0.5 },
 *   ],
 *   105,
 *   () => 0,
 *   0,
 * ) // => { chosen: [2, 1], sum: 110 }
 * @source Kellerer, Pferschy and Pisinger's treatment of the knapsack problem, from memory
 */
export class CheapestCover {
  private readonly cost = new Float64Array(steps + 1);
  private readonly sum = new Float64Array(steps + 1);
  private readonly node = new Int32Array(steps + 1);
  private readonly giver: number[] = [];
  private readonly parent: number[] = [];
  /** Choices weighed so far: the measure of work done. */
  work = 0;

  /**
   * @param givers widths in mm and costs in mm2
   * @param need width to reach, mm
   * @param worth what width beyond the need is worth: mm2 for so many mm
   * @param worthAtMost what one mm beyond the need can be worth at most, mm2: saves asking where it can't matter
   */
  choose(
    givers: readonly Giving[],
    need: number,
    worth: (beyond: number) => number,
    worthAtMost: number,
  ): { chosen: number[]; sum: number } {
    const { cost, sum, node, giver, parent } = this;
    const step = need / steps;
    cost.fill(Number.POSITIVE_INFINITY);
    cost[0] = 0;
    sum[0] = 0;
    node[0] = noNode;
    giver.length = 0;
    parent.length = 0;
    let bestNet = Number.POSITIVE_INFINITY;
    let bestNode = noNode;
    let bestSum = 0;
    let top = 0;
    for (let item = 0; item < givers.length; item++) {
      const { gives, cost: price } = givers[item] as Giving;
      const was = top;
      for (let at = was; at >= 0; at--) {
        const before = cost[at] as number;
        if (before === Number.POSITIVE_INFINITY) continue;
        const reached = (sum[at] as number) + gives;
        const total = before + price;
        if (reached >= need) {
          if (total - worthAtMost * (reached - need) >= bestNet) continue;
          const net = total - worth(reached - need);
          if (net < bestNet) {
            bestNet = net;
            bestSum = reached;
            bestNode = giver.length;
            giver.push(item);
            parent.push(node[at] as number);
          }
          continue;
        }
        const to = Math.floor(reached / step);
        const held = cost[to] as number;
        if (total < held || (total === held && reached > (sum[to] as number))) {
          cost[to] = total;
          sum[to] = reached;
          node[to] = giver.length;
          giver.push(item);
          parent.push(node[at] as number);
          if (to > top) top = to;
        }
      }
      this.work += was + 1;
    }
    if (bestNode === noNode) {
      bestNode = node[top] as number;
      bestSum = sum[top] as number;
    }
    const chosen: number[] = [];
    for (let link = bestNode; link !== noNode; link = parent[link] as number) chosen.push(giver[link] as number);
    return { chosen, sum: bestSum };
  }
}
