import type { Draft, Place } from './draft.ts';
import { newBlankCost, plainCost } from './draft-cost.ts';
import { blurred, type Mood } from './mood.ts';
import type { Unit } from './rack.ts';
import { widestStrip } from './strip-limits.ts';

/** Gives one solid part its strip, where that costs least wood, and says whether there was a place. */
export function placeSolid(draft: Draft, unitAt: number, mood: Mood): boolean {
  const unit = draft.rack.units[unitAt] as Unit;
  const place = cheapestPlace(draft, unit, mood);
  if (!place) {
    draft.distance[unitAt] = distanceOf(draft, unit);
    return false;
  }
  draft.cut(place, unitAt, unit.need, 1);
  draft.missing[unitAt] = 0;
  return true;
}

/** Beside other strips if it can be; a face that is too plain there only where no new blank has a better one. */
function cheapestPlace(draft: Draft, unit: Unit, mood: Mood): Place | undefined {
  const beside = besideOthers(draft, unit, mood);
  if (beside && !tooPlain(draft, unit, beside)) return beside;
  const fresh = onNewBlank(draft, unit, mood);
  return beside && (!fresh || tooPlain(draft, unit, fresh)) ? beside : fresh;
}

const tooPlain = ({ rack }: Draft, { partAt }: Unit, { boardAt }: Place) => rack.tooPlain(partAt, boardAt);

function besideOthers(draft: Draft, unit: Unit, mood: Mood): Place | undefined {
  const { shop, maySupply } = draft.rack;
  const asNew = unit.need * unit.blankLength;
  let best: Place | undefined;
  for (const [blankAt, blank] of draft.blanks.entries()) {
    const { run, free, length, runAt } = blank;
    if (free < unit.need || !maySupply(unit.partAt, run.boardAt)) continue;
    const longer = unit.blankLength > length;
    if (longer && !draft.canLengthen(blank, unit.blankLength)) continue;
    const needed = longer ? unit.blankLength : length;
    if (widestStrip(shop, run.board, unit.part, needed) < unit.need) continue;
    const wood = longer ? run.board.width * (needed - length) : 0;
    // Rather where little is left over, and where the length is not wasted.
    const left = free - unit.need - shop.ripKerf;
    const wasted = (left < shop.minStrip ? left : 0) * needed + unit.need * (needed - unit.blankLength);
    const wooden = blurred(mood, wood + wasted * 0.5);
    const cost = wooden + plainCost(draft.rack, unit, run.boardAt, unit.need, mood.weights);
    if (wooden < asNew && cost < (best?.cost ?? Number.POSITIVE_INFINITY))
      best = { cost, blankAt, runAt, boardAt: run.boardAt };
  }
  return best;
}

function onNewBlank(draft: Draft, unit: Unit, mood: Mood): Place | undefined {
  const { shop, runs, maySupply } = draft.rack;
  const piece = unit.blankLength + shop.crosscutKerf;
  const strip = unit.need + shop.ripKerf;
  let best: Place | undefined;
  for (const [runAt, run] of runs.entries()) {
    if ((draft.room[runAt] as number) < piece || run.width < unit.need || !maySupply(unit.partAt, run.boardAt))
      continue;
    if (widestStrip(shop, run.board, unit.part, unit.blankLength) < unit.need) continue;
    const serves = Math.min(mood.waiting.alike(unit) + 1, Math.floor((run.width + shop.ripKerf) / strip));
    const left = run.width - serves * strip;
    const worth = mood.credit * mood.waiting.worth(run.board.species, left, unit.blankLength);
    const wood = (newBlankCost(draft, runAt, unit.blankLength, mood.weights) - worth) / serves;
    const cost = blurred(mood, wood) + plainCost(draft.rack, unit, run.boardAt, unit.need, mood.weights);
    if (cost < (best?.cost ?? Number.POSITIVE_INFINITY)) best = { cost, blankAt: -1, runAt, boardAt: run.boardAt };
  }
  return best;
}

/** How far the roomiest run is from holding a new blank for the unit: the share of the blank's length that lacks. */
function distanceOf(draft: Draft, unit: Unit): number {
  const { runs, maySupply } = draft.rack;
  let most = 0;
  for (const [runAt, { width, boardAt }] of runs.entries())
    if (width >= unit.need && maySupply(unit.partAt, boardAt)) most = Math.max(most, draft.room[runAt] as number);
  return Math.max(0, 1 - most / unit.blankLength);
}
