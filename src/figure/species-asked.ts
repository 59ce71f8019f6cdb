import { type Outcome, problem } from '../core/answer/problem.ts';
import { findSpecies, type Species, species } from '../tables/species.ts';

/** The species that an input names; `instead` says what may be given in its place. */
export function speciesAsked(name: unknown, instead: string): Outcome<Species> {
  const found = typeof name === 'string' ? findSpecies(name) : undefined;
  const names = species.map((one) => one.name).join('; ');
  return found ?? problem('species', `No such species in the tables. ${instead} There are: ${names}.`);
}
