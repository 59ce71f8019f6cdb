import { isProblem, type Outcome } from '../../../src/core/answer/problem.ts';
import type { Cut } from '../../../src/core/movement/cut.ts';
import type { Wood } from '../../../src/core/movement/part-movement.ts';
import { findSpecies } from '../../../src/tables/species.ts';

export function wood(name: string, cut: Cut = 'flat'): Wood {
  const figures = findSpecies(name);
  if (!figures) throw new Error(`no ${name}`);
  return { figures, cut };
}

/** The answer, where a test takes it for granted that there is one. */
export function answered<T>(outcome: Outcome<T>): T {
  if (isProblem(outcome)) throw new Error(`${outcome.field}: ${outcome.message.text}`);
  return outcome;
}

export const cherry = wood('cherry, black');
export const seasons = { today: 8, dry: 6, wet: 11 };
