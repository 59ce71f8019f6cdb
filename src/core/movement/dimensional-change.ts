import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome, problem } from '../answer/problem.ts';
import { factor, mm, percent } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { moistureProblem } from '../moisture/moisture-problem.ts';
import { changeByCoefficient } from './change-by-coefficient.ts';
import { changeByShrinkage } from './change-by-shrinkage.ts';
import { type Cut, cuts } from './cut.ts';
import type { MovementFigures } from './movement-figures.ts';
import { type MovementRate, movementRate } from './movement-rate.ts';

/** Wider than any part; beyond it a slip of the finger is likelier. */
export const widestPart = 20_000;

export interface DimensionalChangeInput {
  readonly figures: MovementFigures;
  readonly cut: Cut;
  /** Size across the grain at `from`, mm. */
  readonly width: number;
  /** Moisture, percent. */
  readonly from: number;
  readonly to: number;
}

export interface DimensionalChange {
  /** mm, swelling positive. */
  readonly change: number;
  readonly rate: MovementRate;
}

/**
 * How much wider or narrower a part gets when its moisture changes. Within 6 % to 14 % by the coefficient of
 * dimensional change where the species has one (Eq. 13-2), otherwise by its shrinkage (Eq. 13-3).
 *
 * @param input the species' figures, cut, width in mm, moisture from and to in percent
 * @returns change in mm (swelling positive) and the rate it was found by
 * @valid solid wood across the grain, moisture from 0 to 30 %, evenly through the part; along the grain wood hardly
 *   moves
 * @errors a `Problem` on `cut`, `width`, `from`, `to`, or on `species` when its figures don't suffice
 * @example dimensionalChange({ ...cherry, width: 400, from: 8, to: 11 }).value // => { change: 2.98 }
 * @source Wood handbook (FPL-GTR-190), Eq. 13-2 and 13-3
 */
export function dimensionalChange(input: DimensionalChangeInput): Outcome<Worked<DimensionalChange>> {
  const { figures, cut, width, from, to } = input;
  const wrong =
    (cuts.includes(cut) ? undefined : problem('cut', 'The cut must be flat, rift or quarter.')) ??
    badNumber('width', 'The width', width, 'mm', { above: 0, most: widestPart }) ??
    moistureProblem('from', from) ??
    moistureProblem('to', to);
  if (wrong) return wrong;
  const rate = movementRate(figures, cut, from, to);
  if (isProblem(rate)) return rate;
  const byCoefficient = rate.basis === 'coefficient';
  const change = (byCoefficient ? changeByCoefficient : changeByShrinkage)(width, rate.value, from, to);
  const how = byCoefficient
    ? phrase`coefficient ${factor(rate.value)} × (moisture ${percent(to)} − ${percent(from)})`
    : phrase`(moisture ${percent(to)} − ${percent(from)}) ÷ (3000 ÷ shrinkage ${percent(rate.value)} − 30 + ${percent(from)})`;
  return {
    value: { change, rate },
    working: {
      steps: [rate.step, workingStep('change of width', phrase`width ${mm(width)} × ${how}`, mm(change))],
      holds: phrase`Solid wood across the grain, moisture ${byCoefficient ? '6% to 14%' : 'up to 30%'}. A finish only slows movement.`,
      sources: [...new Set([...rate.sources, 'wood-handbook' as const])],
    },
  };
}
