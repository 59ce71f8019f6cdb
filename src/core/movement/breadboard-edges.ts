import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome } from '../answer/problem.ts';
import { factor, mm } from '../answer/quantity.ts';
import type { Worked, WorkingStep } from '../answer/worked.ts';
import { partMovement, type Wood } from './part-movement.ts';
import type { Seasons } from './seasons.ts';

export interface BreadboardInput {
  readonly wood: Wood;
  /** Of the panel across its grain today, mm; the end is cut flush to it. */
  readonly width: number;
  readonly seasons: Seasons;
  /** Where the fixed peg sits, from one edge, mm. */
  readonly fixedAt: number;
}

/** How far the panel stands out beyond its end (positive) or falls short of it, at the near and the far edge, mm. */
export interface BreadboardEdges {
  readonly dry: { readonly near: number; readonly far: number };
  readonly wet: { readonly near: number; readonly far: number };
}

/**
 * How far the edges of a panel stand out beyond a breadboard end, one peg of which is fixed.
 *
 * @param input wood and width of the panel (mm), moisture today and in the seasons (percent), the fixed peg (mm)
 * @returns how far the panel's edges stand out or fall short in each season, mm
 * @valid a panel flush with its ends today; glue at the fixed peg only
 * @errors a `Problem` on the width, the seasons, the species or `fixedAt`
 * @example breadboardEdges({ wood: cherry, width: 600, seasons, fixedAt: 300 }).value
 *   // => { dry: { near: -1.5 }, wet: { near: 2.2 } }
 * @source movement by Wood handbook (FPL-GTR-190), chapter 13; the construction is common practice
 */
export function breadboardEdges({ wood, width, seasons, fixedAt }: BreadboardInput): Outcome<Worked<BreadboardEdges>> {
  const whole = partMovement(wood, width, seasons);
  if (isProblem(whole)) return whole;
  const wrong = badNumber('fixedAt', 'The fixed peg', fixedAt, 'mm', { least: 0, most: width });
  if (wrong) return wrong;
  const near = fixedAt / width;
  const edges = (change: number) => ({ near: change * near, far: change * (1 - near) });
  const share = Math.max(near, 1 - near);
  const edge = (season: string, change: number): WorkingStep => ({
    finds: `edge of the panel, ${season} season`,
    by: phrase('change {change} × {share} beyond the fixed peg', { change: mm(change), share: factor(share) }),
    gives: mm(change * share),
  });
  const { dryChange, wetChange } = whole.value;
  return {
    value: { dry: edges(dryChange), wet: edges(wetChange) },
    working: {
      ...whole.working,
      steps: [...whole.working.steps, edge('dry', dryChange), edge('damp', wetChange)],
    },
  };
}
