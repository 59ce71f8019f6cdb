import { isProblem, type Problem, problem } from '../core/answer/problem.ts';
import { range } from '../core/answer/range.ts';
import { type Container, chooseContainers } from '../core/finishing/choose-containers.ts';
import { finishAmount } from '../core/finishing/finish-amount.ts';
import type { Figure } from './ask.ts';

interface Input {
  readonly area: number;
  readonly coverage: number | { readonly least: number; readonly most: number };
  readonly coats: number;
  readonly waste?: number;
  readonly firstCoat?: number;
  readonly containers: readonly Container[];
}

/** The core's field names in the input's words. */
const fields: Readonly<Record<string, string>> = {
  'areas.0.areaM2': 'area',
  'areas.0.coats': 'coats',
  'areas.0.firstCoat': 'firstCoat',
  loss: 'waste',
  litres: 'area',
};

const inInput = (found: Problem): Problem => ({ ...found, field: fields[found.field] ?? found.field });

function badShape({ coverage, containers }: Input): Problem | undefined {
  if (typeof coverage !== 'number' && (typeof coverage !== 'object' || coverage === null))
    return problem('coverage', 'The spreading rate is missing: square metres per litre.');
  if (!Array.isArray(containers)) return problem('containers', 'Type in at least one size with its price.');
  const index = containers.findIndex((one) => typeof one !== 'object' || one === null);
  return index < 0 ? undefined : problem(`containers.${index}`, 'A container is litres and a price.');
}

/** How much finish an area takes and the cheapest containers that hold it. The likely amount is bought. */
export const figure: Figure = (input) => {
  const asked = input as Input;
  const bad = badShape(asked);
  if (bad) return bad;
  const { area, coverage, coats, waste, firstCoat, containers } = asked;
  const amount = finishAmount({
    areas: [{ areaM2: area, coats, ...(firstCoat !== undefined && { firstCoat }) }],
    coverage: typeof coverage === 'number' ? range(coverage) : coverage,
    source: 'label',
    ...(waste !== undefined && { loss: waste }),
  });
  if (isProblem(amount)) return inInput(amount);
  const { total, coats: perCoat } = amount.value;
  const purchase = chooseContainers(total.likely, containers);
  if (isProblem(purchase)) return inInput(purchase);
  const { buy, cost, left } = purchase.value;
  return { litres: total.likely, buy, cost, left, perCoat: perCoat.map((coat) => coat.likely), range: total };
};
