import { CheapestCover } from './cheapest-cover.ts';
import { chooseRuin } from './choose-ruin.ts';
import { Draft } from './draft.ts';
import { draftCost, shortageCost } from './draft-cost.ts';
import { moodOf } from './mood.ts';
import type { Rack } from './rack.ts';
import { seededRandom } from './random.ts';
import { rebuild } from './rebuild.ts';
import { Waiting } from './waiting.ts';
import type { Weights } from './weights.ts';

/** The best draft so far, and the share of the work that is done. */
export interface Found {
  readonly draft: Draft;
  readonly done: number;
}

/** Warmest acceptance: a draft this much dearer may be gone on from, so that the search leaves a dead end. */
const warmest = 0.01;

/**
 * Large-neighbourhood search: take some units out, put them back another way, go on from there when it isn't much
 * dearer, less and less so. Yields after every attempt, so that whoever drives it can stop at any time. `work` is how
 * many choices may be weighed, and four times as many while something is short; the same on every machine, so the
 * answer is too. `start` is a draft to do better than.
 */
export function* search(rack: Rack, weights: Weights, work: number, start?: Draft): Generator<Found, Draft> {
  const random = seededRandom(1);
  const cover = new CheapestCover();
  const all = rack.units.map((_, at) => at);
  const shortage = shortageCost(rack);
  const costOf = (draft: Draft) => draftCost(draft, weights, shortage);
  const greedily = (draft: Draft, pending: readonly number[]) => {
    const waiting = new Waiting(rack, pending);
    const mood = { random, waiting, credit: 0.8, blur: 0, lengthen: false, weights };
    rebuild(draft, pending, 0, mood, cover);
  };
  let current = new Draft(rack);
  greedily(current, all);
  let currentCost = costOf(current);
  if (start) {
    const resumed = start.copy();
    greedily(
      resumed,
      all.filter((at) => (resumed.missing[at] as number) > 0),
    );
    if (costOf(resumed) <= currentCost) current = resumed;
    currentCost = costOf(current);
  }
  let best = current;
  let bestCost = currentCost;
  yield { draft: best, done: 0 };
  const short = () => best.missing.some((lacks) => lacks > 0);
  while (all.length > 0 && (cover.work < work || (cover.work < 4 * work && short()))) {
    const next = current.copy();
    const gone = chooseRuin(next, random);
    next.remove(gone);
    const pending = all.filter((at) => gone[at]);
    // New blanks are weighed by what each part that waits could make of the rest.
    cover.work += attemptWork + (1 + pending.length * rack.together.length * 0.25) * rack.runs.length;
    rebuild(next, pending, random() < 0.5 ? 0 : 0.5, moodOf(random, new Waiting(rack, pending), weights), cover);
    const cost = costOf(next);
    const done = Math.min(1, cover.work / work);
    const tolerance = warmest * (1 - done) ** 2 * random();
    if (cost <= currentCost * (1 + tolerance)) {
      current = next;
      currentCost = cost;
    }
    if (cost < bestCost) {
      best = next;
      bestCost = cost;
    }
    yield { draft: best, done };
  }
  return best;
}

/** What one attempt costs beside the choices weighed in it, in the same measure. */
const attemptWork = 2000;
