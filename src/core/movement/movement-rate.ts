import { phrase } from '../answer/phrase.ts';
import { type Outcome, problem, within } from '../answer/problem.ts';
import { factor, percent } from '../answer/quantity.ts';
import type { SourceId } from '../answer/source-id.ts';
import type { WorkingStep } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { coefficientRange } from './change-by-coefficient.ts';
import { shrinkageFromCoefficient } from './change-by-shrinkage.ts';
import { acrossFace, type Cut } from './cut.ts';
import type { MovementFigures } from './movement-figures.ts';
import { shrinkageFromVolumetric } from './shrinkage-from-volumetric.ts';
import { shrinkageProblem } from './shrinkage-problem.ts';

/** The figure that a movement is worked out with. */
export interface MovementRate {
  /** A coefficient per percent for Eq. 13-2, a shrinkage in percent for Eq. 13-3. */
  readonly basis: 'coefficient' | 'shrinkage';
  readonly value: number;
  /** Whether it is only a guess from the volume's shrinkage, to be shown as one. */
  readonly estimated: boolean;
  readonly step: WorkingStep;
  readonly sources: readonly SourceId[];
}

const inRange = (moisture: number): boolean => moisture >= coefficientRange.least && moisture <= coefficientRange.most;

/**
 * The best figure there is for a board of that cut between two moistures, in this order: the coefficient, within its
 * range; the shrinkage; the shrinkage that the coefficient stands for; a guess from the volume's shrinkage.
 *
 * @param figures what is known of the species
 * @param cut flat, rift or quarter
 * @param from percent
 * @param to percent
 * @returns the figure, what it is, and the step that found it
 * @valid moistures from 0 to 30 %
 * @errors a `Problem` on `species` that says which figure is missing; on `shrinkage` when one of the maker's own makes
 *   no sense
 * @example [8, 4].map((from) => movementRate(cherry.figures, 'flat', from, 11))
 *   // => [{ value: 0.00248 }, { value: 7.1 }]
 * @source Wood handbook (FPL-GTR-190), chapter 13
 */
export function movementRate(figures: MovementFigures, cut: Cut, from: number, to: number): Outcome<MovementRate> {
  const { coefficients, shrinkage } = figures;
  const wrong = shrinkage && shrinkageProblem(shrinkage);
  if (wrong) return within(wrong, 'shrinkage');
  const rate = (value: number, by: string, source: SourceId, basis: MovementRate['basis'], estimated = false) => ({
    basis,
    value,
    estimated,
    step: workingStep(
      basis === 'coefficient' ? 'coefficient of dimensional change' : 'shrinkage, green to ovendry',
      phrase`${by}, ${cut === 'rift' ? 'mean of ' : ''}${directions[cut]} (${cut}-sawn)`,
      basis === 'coefficient' ? factor(value) : percent(value),
    ),
    sources: estimated || cut === 'rift' ? ([source, 'assumption'] as const) : [source],
  });
  const coefficient = acrossFace(cut, coefficients);
  if (coefficients && coefficient !== undefined && inRange(from) && inRange(to))
    return rate(coefficient, 'tabulated', coefficients.source, 'coefficient');
  const tabulated = acrossFace(cut, shrinkage);
  if (shrinkage && tabulated !== undefined) return rate(tabulated, 'as given', shrinkage.source, 'shrinkage');
  if (coefficients && coefficient !== undefined) {
    const turned = shrinkageFromCoefficient(coefficient);
    return rate(turned, 'from the coefficient of dimensional change', coefficients.source, 'shrinkage');
  }
  const { volumetric } = shrinkage ?? {};
  const guessed =
    volumetric === undefined ? undefined : acrossFace(cut, { ...shrinkageFromVolumetric(volumetric), ...shrinkage });
  return shrinkage && guessed !== undefined
    ? rate(guessed, 'a guess from the volume', shrinkage.source, 'shrinkage', true)
    : problem('species', `This wood has no ${directions[cut]} figure. Add its shrinkage from a data sheet.`);
}

/** The figures that a board of each cut moves by. */
const directions: Readonly<Record<Cut, string>> = {
  flat: 'tangential',
  quarter: 'radial',
  rift: 'radial and tangential',
};
