import { isProblem, type Outcome, problem } from '../core/answer/problem.ts';
import { type DimensionalChangeInput, dimensionalChange } from '../core/movement/dimensional-change.ts';
import type { MovementFigures, Shrinkage } from '../core/movement/movement-figures.ts';
import type { Figure } from './ask.ts';
import { speciesAsked } from './species-asked.ts';

/**
 * `{"species": "cherry, black", "cut": "flat", "width": 400, "from": 8, "to": 11}` to the change of width. Instead of a
 * species from the table, `shrinkage` takes a wood's own figures: `{"radial": 3.7, "tangential": 7.1, "volumetric": 11.5}`.
 */
export const figure: Figure = (input) => {
  const figures = figuresOf(input as Record<string, unknown>);
  if (isProblem(figures)) return figures;
  const { cut, width, from, to } = input as DimensionalChangeInput;
  const movement = dimensionalChange({ figures, cut, width, from, to });
  if (isProblem(movement)) return movement;
  const { change, rate } = movement.value;
  return {
    change,
    equation: rate.basis === 'coefficient' ? '13-2' : '13-3',
    figure: rate.value,
    estimated: rate.estimated,
    sources: movement.working.sources,
  };
};

function figuresOf({ species, shrinkage }: Record<string, unknown>): Outcome<MovementFigures> {
  if (shrinkage !== undefined) {
    if (species !== undefined) return problem('species', 'Give a species or its shrinkage, not both.');
    if (typeof shrinkage !== 'object' || shrinkage === null)
      return problem('shrinkage', 'The shrinkage must hold radial, tangential or volumetric, in percent.');
    const { radial, tangential, volumetric } = shrinkage as Shrinkage;
    return {
      shrinkage: {
        ...(radial !== undefined && { radial }),
        ...(tangential !== undefined && { tangential }),
        ...(volumetric !== undefined && { volumetric }),
        source: 'label',
      },
    };
  }
  return speciesAsked(species, 'Check the name, or give its shrinkage from a data sheet.');
}
