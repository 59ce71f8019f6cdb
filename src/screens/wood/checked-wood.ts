import { badNumber } from '../../core/answer/bad-number.ts';
import { type Outcome, problem } from '../../core/answer/problem.ts';
import { shrinkageProblem } from '../../core/movement/shrinkage-problem.ts';
import type { OwnWood } from '../../store/records/shop.ts';
import { findSpecies } from '../../tables/species.ts';

/** Checks a wood as it is typed; the first entry that is no good is the problem, at its name. */
export function checkedWood({ name: typed, openPores, ...figures }: OwnWood): Outcome<OwnWood> {
  const name = typed.trim().replace(/\s+/g, ' ');
  if (name === '' || name.length > 60) return problem('name', 'Give it a name of up to 60 letters.');
  if (findSpecies(name)) return problem('name', 'The table has this wood already.');
  const { gravity } = figures;
  const wrong =
    shrinkageProblem(figures) ??
    (gravity === undefined
      ? undefined
      : badNumber('gravity', 'The specific gravity', gravity, 'factor', { least: 0.05, most: 1.4 }));
  return wrong ?? { name, ...figures, ...(openPores && { openPores }) };
}
