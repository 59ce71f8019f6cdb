import { phrase } from '../answer/phrase.ts';
import { type Outcome, type Problem, problem, within } from '../answer/problem.ts';
import { factor, percent } from '../answer/quantity.ts';
import type { SourceId } from '../answer/source-id.ts';
import type { WorkingStep } from '../answer/worked.ts';
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
  const wrong = figuresProblem(figures);
  if (wrong) return wrong;
  const rift: readonly SourceId[] = cut === 'rift' ? ['assumption'] : [];
  const coefficient = coefficients && acrossFace(cut, coefficients.radial, coefficients.tangential);
  if (coefficients && coefficient !== undefined && inRange(from) && inRange(to)) {
    return {
      basis: 'coefficient',
      value: coefficient,
      estimated: false,
      step: {
        finds: 'coefficient of dimensional change',
        by: phrase`tabulated, ${across[cut]}`,
        gives: factor(coefficient),
      },
      sources: [coefficients.source, ...rift],
    };
  }
  const byShrinkage = (value: number, by: string, sources: readonly SourceId[], estimated = false): MovementRate => ({
    basis: 'shrinkage',
    value,
    estimated,
    step: { finds: 'shrinkage, green to ovendry', by: phrase`${by}, ${across[cut]}`, gives: percent(value) },
    sources: [...sources, ...rift],
  });
  const tabulated = shrinkage && acrossFace(cut, shrinkage.radial, shrinkage.tangential);
  if (shrinkage && tabulated !== undefined) return byShrinkage(tabulated, 'as given', [shrinkage.source]);
  if (coefficients && coefficient !== undefined) {
    const turned = shrinkageFromCoefficient(coefficient);
    return byShrinkage(turned, 'from the coefficient of dimensional change', [coefficients.source]);
  }
  if (shrinkage?.volumetric !== undefined) {
    const guess = shrinkageFromVolumetric(shrinkage.volumetric);
    const value = acrossFace(cut, shrinkage.radial ?? guess.radial, shrinkage.tangential ?? guess.tangential);
    if (value !== undefined)
      return byShrinkage(value, 'a guess from the volume', [shrinkage.source, 'assumption'], true);
  }
  return problem('species', `This wood has no ${missing[cut]} figure. Add its shrinkage from a data sheet.`);
}

const across: Readonly<Record<Cut, string>> = {
  flat: 'tangential (flat-sawn)',
  quarter: 'radial (quarter-sawn)',
  rift: 'mean of radial and tangential (rift-sawn)',
};

const missing: Readonly<Record<Cut, string>> = {
  flat: 'tangential',
  quarter: 'radial',
  rift: 'radial and tangential',
};

function figuresProblem({ shrinkage, coefficients }: MovementFigures): Problem | undefined {
  const possible = (value: number): boolean => value > 0 && value <= 0.02;
  const wrong = shrinkage && shrinkageProblem(shrinkage);
  if (wrong) return within(wrong, 'shrinkage');
  if (coefficients && !(possible(coefficients.radial) && possible(coefficients.tangential)))
    return problem('coefficients', 'A coefficient lies above 0 and at most 0.02 per percent.');
  return undefined;
}
