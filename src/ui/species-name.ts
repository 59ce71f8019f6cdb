import { speciesById } from '../tables/species.ts';

/** A species as the trade says it: `cherry, black` is `black cherry`. An id that isn't in the table stands for itself. */
export function speciesName(id: string): string {
  const found = speciesById(id);
  if (!found) return id;
  const [, kind, which, note = ''] = /^(.+?), ([^(]+?)( \(.+\))?$/.exec(found.name) ?? [];
  const name = kind ? `${which} ${kind}${note}` : found.name;
  const said = found.alsoCalled.find((other) => !name.includes(other));
  return said ? `${name} (${said})` : name;
}
