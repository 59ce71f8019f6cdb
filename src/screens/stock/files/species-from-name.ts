import { species } from '../../../tables/species.ts';
import { ownWoods } from '../../../ui/own-woods.ts';
import { speciesName } from '../../../ui/species-name.ts';

const plain = (name: string) => name.trim().toLowerCase().replace(/\s+/g, ' ');

const known = new Map<string, string>();
for (const one of species) {
  // A name that two woods share (oak) names neither; the table's own names come first.
  for (const name of one.alsoCalled) known.set(plain(name), known.has(plain(name)) ? '' : one.id);
}
for (const one of species) {
  for (const name of [one.id, one.name, speciesName(one.id)]) known.set(plain(name), one.id);
}

/**
 * The wood that a list means: by the table's name, the trade's, or the id, or one of the maker's own; undefined when none
 * or more than one is meant.
 */
export const speciesFromName = (name: string): string | undefined =>
  known.get(plain(name)) || ownWoods.value.find((own) => plain(own.name) === plain(name))?.name;
