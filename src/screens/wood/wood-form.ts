import { badNumber } from '../../core/answer/bad-number.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { isProblem, type Outcome, problem, within } from '../../core/answer/problem.ts';
import { shrinkageProblem } from '../../core/movement/shrinkage-problem.ts';
import type { OwnWood } from '../../store/records/shop.ts';
import { findSpecies } from '../../tables/species.ts';

export const figures = ['tangential', 'radial', 'volumetric', 'gravity'] as const;

/** A wood as it is typed; kept through a killed tab. */
export interface WoodForm {
  readonly name: string;
  readonly tangential: string;
  readonly radial: string;
  readonly volumetric: string;
  readonly gravity: string;
  readonly openPores: boolean;
}

export const emptyForm: WoodForm = {
  name: '',
  tangential: '',
  radial: '',
  volumetric: '',
  gravity: '',
  openPores: false,
};

export function formOf({ name, openPores = false, ...wood }: OwnWood): WoodForm {
  const typed = figures.map((figure) => [figure, wood[figure] === undefined ? '' : String(wood[figure])]);
  return { ...emptyForm, ...Object.fromEntries(typed), name, openPores };
}

/** Reads and checks what was typed; the first entry that is no good is the problem, at its name. */
export function readWood(form: WoodForm): Outcome<OwnWood> {
  const name = form.name.trim().replace(/\s+/g, ' ');
  if (name === '' || name.length > 60) return problem('name', 'Give it a name of up to 60 letters.');
  if (findSpecies(name)) return problem('name', 'The table has this wood already.');
  const wood: Partial<Record<(typeof figures)[number], number>> = {};
  for (const figure of figures) {
    if (form[figure].trim() === '') continue;
    const value = parseNumber(form[figure]);
    if (isProblem(value)) return within(value, figure);
    wood[figure] = value;
  }
  const wrong =
    shrinkageProblem(wood) ??
    (wood.gravity === undefined
      ? undefined
      : badNumber('gravity', 'The specific gravity', wood.gravity, 'factor', { least: 0.05, most: 1.4 }));
  return wrong ?? { name, ...wood, ...(form.openPores && { openPores: true }) };
}
